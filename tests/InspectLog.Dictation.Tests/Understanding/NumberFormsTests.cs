using System.Globalization;
using CsCheck;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Measuring;
using Check = InspectLog.Checks.Check;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Every way of saying or writing a number, over every measured check of the sheet, on values within its limits:
/// the value read is the value meant.</summary>
public sealed class NumberFormsTests
{
    private static readonly string[] Digits = ["oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    private static readonly string[] Teens =
        ["ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"];

    private static readonly string[] Tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    // How units are said and written; an empty one where the check implies it.
    private static readonly Dictionary<Unit, (string[] Said, string[] Written)> UnitForms = new()
    {
        [Units.Kilohm] = ([" k", " kilohms", " kilo ohms"], ["k", "K", " k", " kΩ", "kΩ", "K ohms", " k ohms", " kilohms"]),
        [Units.Ohm] = ([" ohms", ""], [" ohms", " Ω", "Ω", ""]),
        [Units.Volt] = ([" volts", ""], [" volts", "V", " V", ""]),
        [Units.Millimetre] = ([" millimetres", " mm", ""], [" mm", "mm", " millimeters", ""]),
        [Units.Degree] = ([" degrees", " degrees before top dead centre"], [" degrees", "°", "° BTDC", " degrees before TDC"]),
    };

    private static readonly string[] Ties = [" ", " is ", ", ", " reads ", ": "];

    private static readonly Gen<Check> Measured = Gen.OneOf([.. Read.Reader.Sheet.Checks.Where(check => check.Measurand is not null)]);

    [Fact]
    public void A_number_in_words_is_read_as_it_is_meant() => Sample((value, unit, gen) => InWords(value, gen.Short) + UnitForms[unit].Said[gen.Form % UnitForms[unit].Said.Length]);

    [Fact]
    public void A_number_in_figures_is_read_as_it_is_meant() => Sample((value, unit, gen) => InFigures(value, gen.Short) + UnitForms[unit].Written[gen.Form % UnitForms[unit].Written.Length]);

    private static void Sample(Func<decimal, Unit, (bool Short, int Form), string> write) =>
        Gen.Select(Measured, Gen.Int[0, 1000], Gen.Bool, Gen.Int[0, 1000], Gen.OneOf(Ties), Gen.Int[1, 6]).Sample((check, part, brief, form, tie, cylinder) =>
        {
            var value = ValueWithin(check, part);
            var place = check.PerCylinder ? $" on {check.PlaceNoun} {Digits[cylinder]}" : "";
            var pause = check.PerCylinder && tie == " " ? ", " : tie;
            var text = $"{check.Spoken.Subjects[0]}{place}{pause}{write(value, check.Measurand!.DisplayUnit, (brief, form))}";
            var finding = Assert.Single(Read.Reader.Read(text));
            Assert.Equal((FindingKind.Reading, check.Id), (finding.Kind, finding.Check));
            Assert.Equal((double)value * check.Measurand.DisplayUnit.InBaseUnit, finding.Value!.Value, 1e-6);
            Assert.Equal(check.PerCylinder ? cylinder : (int?)null, finding.Place?.Cylinder);
        }, iter: 2000);

    // A value of the check in its display unit, with at most two figures after the point.
    private static decimal ValueWithin(Check check, int part)
    {
        var measurand = check.Measurand!;
        var from = (decimal)(measurand.Limits?.Lower ?? Math.Max(measurand.Plausible.From, 0) + measurand.DisplayUnit.InBaseUnit);
        var to = (decimal)(measurand.Limits?.Upper ?? measurand.Plausible.To / 2);
        var step = measurand.DisplayUnit == Units.Degree ? 1m : to / (decimal)measurand.DisplayUnit.InBaseUnit < 5 ? 0.05m : 0.1m;
        var size = (from + (to - from) * part / 1000) / (decimal)measurand.DisplayUnit.InBaseUnit;
        return Math.Max(step, Math.Round(size / step) * step);
    }

    private static string InFigures(decimal value, bool brief)
    {
        var figures = value.ToString("0.##", CultureInfo.InvariantCulture);
        return brief && figures.StartsWith("0.", StringComparison.Ordinal) ? figures[1..] : figures;
    }

    private static string InWords(decimal value, bool brief)
    {
        var parts = value.ToString("0.##", CultureInfo.InvariantCulture).Split('.');
        var whole = int.Parse(parts[0], CultureInfo.InvariantCulture);
        if (parts.Length == 1)
        {
            return Whole(whole);
        }

        if (parts[1] == "5" && whole > 0 && brief)
        {
            return $"{Whole(whole)} and a half";
        }

        var after = string.Join(' ', parts[1].Select(figure => Digits[figure - '0']));
        return whole > 0 ? $"{Whole(whole)} point {after}" : brief ? $"point {after}" : $"nought point {after}";
    }

    private static string Whole(int value) => value switch
    {
        < 10 => Digits[value],
        < 20 => Teens[value - 10],
        _ => value % 10 == 0 ? Tens[value / 10] : $"{Tens[value / 10]}-{Digits[value % 10]}",
    };
}
