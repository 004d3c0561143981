package org.pullproof.files;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.pullproof.units.Money;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

/** Money spent and options entered. */
final class MoneyJson {
    private MoneyJson() {}

    static MoneyBook read(JsonPlace place) throws BadFileException {
        place.onlyKeys("spent", "options");
        return new MoneyBook(place.each("spent", MoneyJson::spending), place.each("options", MoneyJson::option));
    }

    private static Spending spending(JsonPlace place) throws BadFileException {
        place.onlyKeys("what", "amount", "date");
        String what = place.at("what").text();
        Money amount = place.at("amount").money();
        LocalDate date = place.at("date").date();
        return place.checked(() -> new Spending(what, amount, date));
    }

    private static Option option(JsonPlace place) throws BadFileException {
        place.onlyKeys("name", "low", "likely", "high", "hours", "gain", "judgement");
        String name = place.at("name").text();
        Money low = place.at("low").money();
        Money likely = place.at("likely").money();
        Money high = place.at("high").money();
        double hours = place.at("hours").number();
        Optional<Option.Gain> gain = place.maybe("gain", MoneyJson::gain);
        boolean judgement = place.at("judgement").flag();
        return place.checked(() -> new Option(name, low, likely, high, hours, gain, judgement));
    }

    private static Option.Gain gain(JsonPlace place) throws BadFileException {
        place.onlyKeys("lowPercent", "likelyPercent", "highPercent");
        double low = place.at("lowPercent").number();
        double likely = place.at("likelyPercent").number();
        double high = place.at("highPercent").number();
        return place.checked(() -> new Option.Gain(low, likely, high));
    }

    static Map<String, Object> write(MoneyBook money) {
        return new JsonObject()
                .put("spent", money.spent().stream().map(MoneyJson::write).toList())
                .put("options", money.options().stream().map(MoneyJson::write).toList())
                .entries();
    }

    private static Map<String, Object> write(Spending spending) {
        return new JsonObject()
                .put("what", spending.what())
                .text("amount", spending.amount())
                .text("date", spending.date())
                .entries();
    }

    private static Map<String, Object> write(Option option) {
        JsonObject object = new JsonObject()
                .put("name", option.name())
                .text("low", option.low())
                .text("likely", option.likely())
                .text("high", option.high())
                .put("hours", option.hours());
        option.gain().ifPresent(gain -> object.put("gain", write(gain)));
        return object.put("judgement", option.judgement()).entries();
    }

    private static Map<String, Object> write(Option.Gain gain) {
        return new JsonObject()
                .put("lowPercent", gain.lowPercent())
                .put("likelyPercent", gain.likelyPercent())
                .put("highPercent", gain.highPercent())
                .entries();
    }
}
