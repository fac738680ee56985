namespace InspectLog.Measuring;

/// <summary>What the text after a typed number can mean: a unit, and for an angle which side of top dead centre.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Sign">−1 for an angle after top dead centre, otherwise 1.</param>
/// <param name="SaysSide">Whether the side of top dead centre was said.</param>
internal readonly record struct UnitMeaning(Unit Unit, int Sign = 1, bool SaysSide = false);

/// <summary>The ways people write units.</summary>
internal static class UnitWords
{
    // Written exactly so: the only difference between a milliohm and a megohm is the size of one letter.
    private static readonly Dictionary<string, Unit> Exact = new(StringComparer.Ordinal)
    {
        ["mΩ"] = Units.Milliohm,
        ["MΩ"] = Units.Megohm,
        ["Mohm"] = Units.Megohm,
        ["Mohms"] = Units.Megohm,
    };

    // A letter alone means what the check measures: 9.4k is kΩ in one field and kV in another.
    private static readonly Dictionary<(QuantityKind, string), Unit[]> Shorthand = new()
    {
        [(QuantityKind.Resistance, "k")] = [Units.Kilohm],
        [(QuantityKind.Resistance, "K")] = [Units.Kilohm],
        [(QuantityKind.Resistance, "r")] = [Units.Ohm],
        [(QuantityKind.Resistance, "R")] = [Units.Ohm],
        [(QuantityKind.Resistance, "M")] = [Units.Megohm],
        [(QuantityKind.Resistance, "m")] = [Units.Megohm, Units.Milliohm],
        [(QuantityKind.Voltage, "k")] = [Units.Kilovolt],
        [(QuantityKind.Voltage, "K")] = [Units.Kilovolt],
        [(QuantityKind.Voltage, "m")] = [Units.Millivolt],
        [(QuantityKind.Current, "m")] = [Units.Milliampere],
        [(QuantityKind.Capacitance, "u")] = [Units.Microfarad],
        [(QuantityKind.Capacitance, "µ")] = [Units.Microfarad],
        [(QuantityKind.Capacitance, "n")] = [Units.Nanofarad],
        [(QuantityKind.Temperature, "°")] = [Units.Celsius, Units.Fahrenheit],
        [(QuantityKind.Temperature, "deg")] = [Units.Celsius, Units.Fahrenheit],
        [(QuantityKind.Temperature, "degrees")] = [Units.Celsius, Units.Fahrenheit],
    };

    private static readonly string[] DegreeWords = ["°", "º", "deg", "degs", "degree", "degrees"];

    private static readonly (Unit Unit, string[] Words)[] AnyCase =
    [
        (Units.Ohm, ["Ω", "ohm", "ohms"]),
        (Units.Kilohm, ["kΩ", "kohm", "kohms", "k ohm", "k ohms", "kilohm", "kilohms", "kiloohm", "kiloohms"]),
        (Units.Megohm, ["MΩ", "mohm", "mohms", "meg", "megs", "megohm", "megohms", "megaohm", "megaohms"]),
        (Units.Milliohm, ["mΩ", "mohm", "mohms", "milliohm", "milliohms"]),
        (Units.Volt, ["V", "volt", "volts", "VDC", "V DC"]),
        (Units.Millivolt, ["mV", "millivolt", "millivolts"]),
        (Units.Kilovolt, ["kV", "kilovolt", "kilovolts"]),
        (Units.Millimetre, ["mm", "millimetre", "millimetres", "millimeter", "millimeters", "mil", "mils"]),
        (Units.Thou, ["thou", "thous", "thousandth", "thousandths", "mil", "mils"]),
        (Units.Inch, ["in", "inch", "inches", "\"", "″", "”"]),
        (Units.Degree, DegreeWords),
        (Units.Ampere, ["A", "amp", "amps", "ampere", "amperes"]),
        (Units.Milliampere, ["mA", "milliamp", "milliamps"]),
        (Units.Rpm, ["rpm", "r.p.m", "r/min", "rev/min", "revs/min", "revs", "revolutions per minute"]),
        (Units.Celsius, ["°C", "C", "deg C", "degC", "degrees C", "celsius", "degrees celsius"]),
        (Units.Fahrenheit, ["°F", "F", "deg F", "degF", "degrees F", "fahrenheit", "degrees fahrenheit"]),
        (Units.Kilopascal, ["kPa", "kilopascal", "kilopascals"]),
        (Units.Bar, ["bar", "bars", "bar g", "barg"]),
        (Units.Psi,
            ["psi", "p.s.i", "psig", "lbf/in²", "lbf/in2", "lb/in²", "lb/in2", "lbs/in²", "lbs/in2", "lb/sq in", "pounds per square inch"]),
        (Units.NewtonMetre, ["N·m", "N.m", "Nm", "N-m", "N m", "newton metre", "newton metres", "newton meter", "newton meters"]),
        (Units.PoundForceFoot,
            [
                "lbf·ft", "lbf.ft", "lbf-ft", "lbf ft", "lb·ft", "lb.ft", "lb-ft", "lb ft", "lbft", "lbs-ft", "lbs ft",
                "ft·lbf", "ft.lbf", "ft-lbf", "ft lbf", "ft·lb", "ft.lb", "ft.lbs", "ft-lb", "ft lb", "ftlb", "ft-lbs", "ft lbs",
                "pound feet", "pound-feet", "pound foot", "foot pound", "foot pounds", "foot-pounds",
            ]),
        (Units.Kilometre, ["km", "kms", "kilometre", "kilometres", "kilometer", "kilometers"]),
        (Units.Mile, ["mi", "mile", "miles"]),
        (Units.Microfarad, ["µF", "uF", "mfd", "microfarad", "microfarads"]),
        (Units.Nanofarad, ["nF", "nanofarad", "nanofarads"]),
        (Units.Millihenry, ["mH", "millihenry", "millihenries", "millihenrys"]),
        (Units.Second, ["s", "sec", "secs", "second", "seconds"]),
        (Units.Millisecond, ["ms", "msec", "millisecond", "milliseconds"]),
        (Units.Minute, ["min", "mins", "minute", "minutes"]),
        (Units.Percent, ["%", "percent", "per cent", "pct"]),
        (Units.GramPerCubicCentimetre, ["g/cm³", "g/cm3", "g/cc", "g/ml", "kg/l", "SG", "s.g", "specific gravity", "grams per cubic centimetre"]),
        (Units.KilogramPerCubicMetre, ["kg/m³", "kg/m3", "g/l", "kilograms per cubic metre"]),
    ];

    private static readonly string[] Before = ["btdc", "b.t.d.c", "before", "before tdc", "before top dead centre"];

    private static readonly string[] After = ["atdc", "a.t.d.c", "after", "after tdc", "after top dead centre"];

    /// <summary>What a text after a number can mean for a check of one kind. None where it is no unit at all; units
    /// of another kind where it is one that does not fit.</summary>
    internal static IReadOnlyList<UnitMeaning> Read(string text, QuantityKind kind)
    {
        var word = text.Trim().TrimEnd('.');
        if (kind == QuantityKind.Angle && Side(word) is { } side)
        {
            return [side];
        }

        if (Exact.TryGetValue(word, out var exact))
        {
            return [new(exact)];
        }

        if (Shorthand.TryGetValue((kind, word), out var shorthand))
        {
            return [.. shorthand.Select(unit => new UnitMeaning(unit))];
        }

        return [.. AnyCase
            .Where(entry => entry.Words.Contains(word, StringComparer.OrdinalIgnoreCase))
            .Select(entry => new UnitMeaning(entry.Unit))];
    }

    /// <summary>The units a text can name by itself, whatever is measured.</summary>
    internal static IReadOnlyList<Unit> Find(string text)
    {
        var word = Digits.Plain(text).TrimEnd('.');
        return Units.Find(word) is { } unit ? [unit]
            : Exact.TryGetValue(word, out var exact) ? [exact]
            : [.. AnyCase
                .Where(entry => entry.Words.Contains(word, StringComparer.OrdinalIgnoreCase))
                .Select(entry => entry.Unit)];
    }

    private static UnitMeaning? Side(string word)
    {
        var degree = DegreeWords
            .Where(unit => word.StartsWith(unit, StringComparison.OrdinalIgnoreCase))
            .MaxBy(unit => unit.Length);
        var side = word[(degree?.Length ?? 0)..].Trim();
        return Before.Contains(side, StringComparer.OrdinalIgnoreCase) ? new(Units.Degree, 1, true)
            : After.Contains(side, StringComparer.OrdinalIgnoreCase) ? new(Units.Degree, -1, true)
            : null;
    }
}
