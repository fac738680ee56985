using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Reads the unit after a number, and for an angle which side of top dead centre it lies.</summary>
internal sealed class UnitGrammar(IReadOnlyList<Token> tokens)
{
    private static readonly PhraseTable<Unit> Known = Table(
        (Units.Ohm, ["ohm"]),
        (Units.Kilohm, ["kilohm", "kilo ohm", "kohm", "k ohm", "kay ohm", "k", "kay", "kilo", "kiloohm"]),
        (Units.Megohm, ["megohm", "meg ohm", "mega ohm", "megaohm", "mohm", "m ohm", "meg"]),
        (Units.Volt, ["volt", "v", "volt dc", "vdc"]),
        (Units.Millivolt, ["millivolt", "milli volt", "mv"]),
        (Units.Millimetre, ["mm", "millimeter", "milli meter", "mil", "mill"]),
        (Units.Thou, ["thou", "thousandth", "thousandth of an inch", "thou of an inch", "mil", "mill"]),
        (Units.Inch, ["inch", "inches", "of an inch"]),
        (Units.Degree, ["degree", "deg", "°", "crank degree"]));

    // What a speech model writes for a unit: English words that sound nearly the same.
    private static readonly PhraseTable<Unit> SoundAlikes = Table(
        (Units.Ohm, ["home", "own", "owe", "arm", "roam", "holm"]),
        (Units.Kilohm, ["kilo home", "kay home", "k home", "kilo own", "cay", "okay", "quay"]),
        (Units.Volt, ["bolt", "vault", "vote", "fault", "bold"]),
        (Units.Millimetre, ["millie meter", "milly meter", "mellow meter"]),
        (Units.Thou, ["though", "vow", "thaw", "sow"]),
        (Units.Degree, ["decree", "decrease", "agree", "the grease"]));

    private static readonly PhraseTable<bool> Foreign = Table(
        (true, [
            "amp", "ampere", "milliamp", "watt", "rpm", "rev", "r p m", "psi", "bar", "percent", "per cent", "mile",
            "kilometer", "km", "mph", "pound", "quid", "dollar", "euro", "pence", "penny", "cent", "buck", "grand",
            "k mile", "thousand mile", "o'clock", "am", "pm", "minute", "min", "hour", "second", "day", "week",
            "month", "year", "liter", "gallon", "pint", "newton", "newton meter", "nm", "foot pound", "pound foot",
            "foot", "feet", "meter", "centimeter", "cm", "celsius", "centigrade", "fahrenheit", "degree celsius",
            "degree centigrade", "degree fahrenheit", "degree c", "degree f", "° c", "° f", "hertz", "hz", "farad",
            "microfarad", "gram", "kilogram", "kg", "ton", "time", "year old", "gauge", "cc", "horsepower",
            "millisecond", "cup", "sugar", "litre", "people", "bloke", "guy", "k range", "ohm range", "volt range",
            "volt scale", "ohm scale", "mm socket", "mm spanner", "millimeter socket", "millimeter spanner",
            "mm nut", "mm bolt", "inch drive", "inch socket", "k a year", "volt battery", "volt system", "of them",
            "past one", "past two", "past three", "past four", "past five", "past six", "past seven", "past eight", "past nine", "past ten", "past eleven", "past twelve", "a set", "a pair", "a piece", "apiece", "a pop", "a box", "spare", "box", "pack", "pair", "stroke", "speed", "or so", "grit"]));

    private static readonly PhraseTable<bool> Counted = Table(
        (true, ["reading", "measurement", "value", "figure", "number", "attempt", "shot", "turn", "tooth", "blade", "gauge", "thing", "job", "hand", "other", "man", "set"]));

    private static readonly PhraseTable<bool> Zero = Table((true, ["top dead center", "tdc"]));

    private static readonly PhraseTable<int> Directions = Table(
        (1, [
            "before top dead center", "before tdc", "before top dead", "before the top", "before top center", "btdc",
            "before", "advanced", "advance", "of advance", "early", "btc"]),
        (-1, [
            "after top dead center", "after tdc", "after top dead", "after the top", "after top center", "atdc",
            "after", "retarded", "retard", "of retard", "late", "past top dead center", "past tdc", "atc"]));

    /// <summary>The unit that starts at a token, or nothing.</summary>
    public UnitReading? At(int at)
    {
        if (at >= tokens.Count)
        {
            return null;
        }

        if (tokens[at] is { Plural: true } counted && Counted.Match(tokens, at) is not null)
        {
            // "Three readings", but not "reading three".
            return new(at + 1, [], 1, false);
        }

        var foreign = Foreign.Match(tokens, at);
        var known = Known.Match(tokens, at);
        if (foreign is { } other && other.Length >= (known?.Length ?? 0))
        {
            return new(at + other.Length, [], 1, false);
        }

        if (known is not { } unit)
        {
            return Direction(at, Units.Degree) ?? SoundAlike(at);
        }

        var next = at + unit.Length;
        return unit.Meanings[0] == Units.Degree && Direction(next, Units.Degree) is { } turned
            ? turned
            : new(next, unit.Meanings, 1, false);
    }

    /// <summary>How many tokens at a place say "top dead centre", which is an angle of zero; 0 where none do.</summary>
    public static int TopDeadCentre(IReadOnlyList<Token> tokens, int at) =>
        at < tokens.Count && Zero.Match(tokens, at) is { } zero ? zero.Length : 0;

    private UnitReading? SoundAlike(int at) => SoundAlikes.Match(tokens, at) is { } alike
        ? new(at + alike.Length, alike.Meanings, 1, false) { Doubt = $"'{tokens[at].Text}' was taken as {alike.Meanings[0].Symbol}" }
        : null;

    private UnitReading? Direction(int at, Unit degree) =>
        at < tokens.Count && Directions.Match(tokens, at) is { } direction && !(direction.Length == 1 && LeadsOn(at + 1))
            ? new(at + direction.Length, [degree], direction.Meanings[0], true)
            : null;

    // "Ten after adjusting", "eight before I moved it": a time and no side of top dead centre.
    private bool LeadsOn(int at) => at < tokens.Count && tokens[at - 1].Stem is "before" or "after" && tokens[at].Kind == TokenKind.Word
        && (tokens[at].Text.EndsWith("ing", StringComparison.Ordinal) && tokens[at].Stem is not "timing"
            || tokens[at].Stem is "i" or "we" or "it" or "that" or "this" or "the" or "my" or "adjustment" or "he" or "they");

    private static PhraseTable<T> Table<T>(params (T Meaning, string[] Phrases)[] rows)
    {
        var table = new PhraseTable<T>();
        foreach (var (meaning, phrases) in rows)
        {
            foreach (var phrase in phrases)
            {
                table.Add(phrase, meaning);
            }
        }

        return table;
    }
}
