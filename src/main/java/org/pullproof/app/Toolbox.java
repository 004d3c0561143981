package org.pullproof.app;

import java.util.function.Function;
import org.pullproof.files.PreferenceFile;
import org.pullproof.files.ProfileShelf;
import org.pullproof.health.OddReading;
import org.pullproof.session.Judgement;

/**
 * Everything a command or a sheet may use, built once by hand in {@code Main}.
 *
 * @param profiles the engine profiles of the program
 * @param demos the demo sessions of the program
 * @param preferences what the user likes
 * @param desk opens sessions and does edits
 * @param setFacts tells facts and wishes
 * @param chooseProfile gives the session another engine profile
 * @param changeSetup brings the engine into another setup
 * @param amendChange puts right what is recorded of a change
 * @param readAir tells what follows from typed air
 * @param recordAir keeps a reading of the air
 * @param addPulls takes in pull files
 * @param foreignFiles finds files whose columns have to be told, and remembers what was told
 * @param readRoll tells what follows from a roll's or a car's speed against time
 * @param prepareDay goes through the gate before the first pull, and tells how the car stands on the dyno
 * @param excludePull takes a pull out of every judgement, with the reason
 * @param addReadings takes in a table of readings
 * @param recordReading keeps one reading
 * @param correctReading puts another reading in the place of a mistyped one
 * @param removeReading takes one reading away
 * @param oddReading tells, by given values of judgement, whether a reading just taken is odd
 * @param tickStep ticks steps of the tune-up
 * @param recordWires keeps what is known of the plug wires
 * @param recordPlug keeps what is known of a plug
 * @param shelveParts keeps the off-car shelf
 * @param recordParts keeps what the tune-up uses up
 * @param recordSettings keeps how the engine is set
 * @param recordWork keeps work done and what beds in
 * @param attachPicture attaches photographs
 * @param editSteps gives a car steps of its own
 * @param makeRunCard makes the printed card of the steps
 * @param recordMoney keeps what is spent and what could be
 * @param appraise tells what a session amounts to, every room asked once
 * @param editJudgement puts other values of judgement in the place of the program's own
 * @param keptSittings shows the documents of earlier sittings and goes back to one
 * @param checkSession reads everything and tells each problem
 * @param makeReport makes the report
 * @param makeTally makes the printed blank of a test
 */
public record Toolbox(
        ProfileShelf profiles,
        DemoShelf demos,
        PreferenceFile preferences,
        SessionDesk desk,
        SetFacts setFacts,
        ChooseProfile chooseProfile,
        ChangeSetup changeSetup,
        AmendChange amendChange,
        ReadAir readAir,
        RecordAir recordAir,
        AddPulls addPulls,
        ForeignFiles foreignFiles,
        ReadRoll readRoll,
        PrepareDay prepareDay,
        ExcludePull excludePull,
        AddReadings addReadings,
        RecordReading recordReading,
        CorrectReading correctReading,
        RemoveReading removeReading,
        Function<Judgement, OddReading> oddReading,
        TickStep tickStep,
        RecordPlug recordPlug,
        RecordWires recordWires,
        ShelveParts shelveParts,
        RecordParts recordParts,
        RecordSettings recordSettings,
        RecordWork recordWork,
        AttachPicture attachPicture,
        EditSteps editSteps,
        MakeRunCard makeRunCard,
        RecordMoney recordMoney,
        Appraise appraise,
        EditJudgement editJudgement,
        KeptSittings keptSittings,
        CheckSession checkSession,
        MakeReport makeReport,
        MakeTally makeTally) {}
