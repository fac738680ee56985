using InspectLog.App.Ui.Drawings;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using static InspectLog.App.Tests.Bench.InDepth;

namespace InspectLog.App.Tests.Bench;

public class ComparedWordsTests
{
    private static readonly ReadingDecided Lost = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 11.6)).Last(Supply).Body;

    private static readonly ReadingDecided ByLength = Scene().Record(Millimetres(600, 1)).Record(Ohm(18_200, 1)).Last(Lead, 1).Body;

    // By hand: the counts of both readings, ±20 mV each, make a triangle whose middle 95.45 % ends at
    // 40 − √(0.0455·40·40) = 31.5 mV; 9.6 mV of gain and two half steps of 5 mV blur it by √((9.6² + 2·5²)/3) = 6.9 mV.
    [Fact]
    public void Sentence_tells_the_reading_and_what_is_lost_with_its_uncertainty() =>
        Assert.Equal(
            "11.60 V: fail. 1.200 V ± 0.034 V below battery voltage, 12.80 V. "
            + "Less than 1 in 100 that it is at most 0.5 V below battery voltage, 12.80 V.",
            Plain(RecordWords.Sentence(Lost, Check(Supply))));

    // By hand: of 18.2 kΩ ±(1 % + 50 Ω) is 0.387 Ω/mm, of 600 mm ±1 mm 0.051 Ω/mm, the half steps next to nothing; the middle
    // 95.45 % of that trapezoid ends at 0.438 − √(0.0455·0.774·0.101) = 0.378 Ω/mm.
    [Fact]
    public void Sentence_tells_which_limit_for_which_length() =>
        Assert.Equal(
            "18.20 kΩ: pass. 30.33 Ω/mm ± 0.38 Ω/mm for the lead length, 600.0 mm. "
            + "More than 99 in 100 that it is at most 32.8084 Ω/mm for the lead length, 600.0 mm.",
            Plain(RecordWords.Sentence(ByLength, Check(Lead))));

    [Fact]
    public void Supply_above_the_battery_is_told_as_such()
    {
        var odd = Scene().Record(Volts(Battery, 12.1)).Record(Volts(Supply, 12.8)).Last(Supply).Body;

        Assert.Contains("0.700 V ± 0.033 V above battery voltage, 12.10 V", Plain(RecordWords.Sentence(odd, Check(Supply))), StringComparison.Ordinal);
    }

    [Fact]
    public void Value_and_spread_are_those_of_the_reading_itself()
    {
        Assert.Equal("11.60\u00a0V", RecordWords.Value(Lost, Check(Supply)));
        Assert.Equal(11.6, RecordWords.BestEstimate(Lost), 12);
        Assert.Equal(Estimate.Of(Lost.Reading).ExpandedUncertainty, RecordWords.Spread(Lost), 12);
    }

    [Fact]
    public void Drawing_stands_on_the_scale_of_the_reading_with_the_limits_moved()
    {
        var volts = Strips.Of(Check(Supply).Measurand!, Lost.Limits, Lost, null);
        var kilohms = Strips.Of(Check(Lead).Measurand!, ByLength.Limits, ByLength, null);

        Assert.Equal((12.3, null, 11.6), (volts.Lower!.Value, volts.Upper, Math.Round(volts.Reading!.Value, 9)));
        Assert.Equal(ReachOf(Lost), ((StripReading.Known)volts.Reading).Shape!.HalfWidth, 12);
        Assert.Equal(600 * 10 / 304.8, kilohms.Upper!.Value, 9);
        Assert.Equal(18.2, kilohms.Reading!.Value, 9);
        Assert.Equal(ReachOf(ByLength) * 0.6, ((StripReading.Known)kilohms.Reading).Shape!.HalfWidth, 9);
    }

    private static double ReachOf(ReadingDecided reading) => DensityCurve.Of(reading.Conformity!.Distribution())!.HalfWidth;

    [Fact]
    public void Chance_is_the_same_on_the_scale_of_the_reading()
    {
        var close = Scene().Record(Volts(Battery, 12.8)).Record(Volts(Supply, 12.31)).Last(Supply).Body;
        var own = OwnScale.Of(close)!;

        // The reading lies as far within the limit on its own scale, and is drawn in the shape it was decided with.
        var chance = 1 - close.Conformity!.Distribution().Above(own.Value - own.Limits.Lower!.Value);
        Assert.Equal(close.Conformity.ProbabilityOfConformity, chance, 1e-9);
        Assert.Equal(ReachOf(close), own.Shape!.HalfWidth, 12);
        Assert.InRange(close.Conformity.ProbabilityOfConformity, 0.55, 0.95);
    }

    [Fact]
    public void Limits_before_a_reading_are_those_that_would_decide_it()
    {
        var scene = Scene();
        var without = OwnScale.LimitsFor(scene, Check(Supply), null, null)!;
        var with = OwnScale.LimitsFor(scene.Record(Volts(Battery, 12.8)), Check(Supply), null, null)!;

        Assert.Equal((11.5, 13.5), (without.Lower, without.Upper));
        Assert.StartsWith("Decided by itself while battery voltage is not read.", without.Source, StringComparison.Ordinal);
        Assert.Equal((12.3, null), (with.Lower, with.Upper));
        Assert.StartsWith("At most 0.5 V below battery voltage, which read 12.80 V. Common practice", Plain(with.Source), StringComparison.Ordinal);
    }

    [Fact]
    public void Sources_of_the_uncertainty_tell_both_readings_and_what_one_meter_would_bring()
    {
        var one = UncertaintySources.Of(Lost, Check(Supply), [])!;
        var two = UncertaintySources.Of(
            Scene().Record(Volts(Battery, 12.8, OtherMeter)).Record(Volts(Supply, 11.6)).Last(Supply).Body, Check(Supply), [])!;

        Assert.Equal(5, one.Parts.Count);
        Assert.Equal(1, one.Parts.Sum(part => part.Share), 9);
        Assert.DoesNotContain(one.Remedies, remedy => remedy.StartsWith("Read both with one meter", StringComparison.Ordinal));
        Assert.Contains(two.Remedies, remedy => remedy.StartsWith("Read both with one meter", StringComparison.Ordinal)
            && Plain(remedy).Contains(" would come down to ± 0.034 V", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_page_tells_what_decides_where_the_other_is_read() =>
        Assert.Equal(
            "Where battery voltage is read as well, this decides instead: at most 0.5 V below battery voltage.",
            Plain(ComparedWords.Rule(Check(Supply).Measurand!.DecidedBy!, Units.Volt)));

    private static string Plain(string text) => text.Replace('\u00a0', ' ');
}
