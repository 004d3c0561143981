package org.pullproof.app;

import org.pullproof.files.PreferenceFile;
import org.pullproof.files.ProfileShelf;

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
 * @param readAir tells what follows from typed air
 * @param recordAir keeps a reading of the air
 * @param addPulls takes in pull files
 * @param excludePull takes a pull out of every judgement, with the reason
 * @param addReadings takes in a table of readings
 * @param recordReading keeps one reading
 * @param removeReading takes one reading away
 * @param tickStep ticks steps of the tune-up
 * @param recordWires keeps what is known of the plug wires
 * @param recordPlug keeps what is known of a plug
 * @param recordMoney keeps what is spent and what could be
 * @param appraise tells what a session amounts to, every room asked once
 * @param checkSession reads everything and tells each problem
 * @param makeReport makes the report
 */
public record Toolbox(
        ProfileShelf profiles,
        DemoShelf demos,
        PreferenceFile preferences,
        SessionDesk desk,
        SetFacts setFacts,
        ChooseProfile chooseProfile,
        ChangeSetup changeSetup,
        ReadAir readAir,
        RecordAir recordAir,
        AddPulls addPulls,
        ExcludePull excludePull,
        AddReadings addReadings,
        RecordReading recordReading,
        RemoveReading removeReading,
        TickStep tickStep,
        RecordPlug recordPlug,
        RecordWires recordWires,
        RecordMoney recordMoney,
        Appraise appraise,
        CheckSession checkSession,
        MakeReport makeReport) {}
