using InspectLog.App.Tests.Bench;
using InspectLog.App.Trends;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Trends;

/// <summary>Readings of two inspections against each other, and what all of a trend have in common.</summary>
public sealed class TrendAgreementTests
{
    private const string SameInstrument = "Both were read with the same instrument, whose own error is in both alike.";

    private static readonly Instrument Meter = new("meter-1", "Bench meter", QuantityKind.Resistance, new(1, 2), 0.01);

    /// <summary>One instrument, ±(1 % + 2 counts of 0.01): 0.02 Ω and half a step are each reading's own, 1 % only of the
    /// difference.</summary>
    [Theory]
    [InlineData(1.50, 1.51, "Agrees with the one before, within their uncertainties (E\u2099 0.3).")]
    [InlineData(1.50, 1.60, "Changed since the one before: by more than the uncertainty of the difference (E\u2099 3.4). " + SameInstrument)]
    [InlineData(1.60, 1.50, "Changed since the one before: by more than the uncertainty of the difference (E\u2099 \u22123.4). " + SameInstrument)]
    public void Two_readings_with_one_instrument_are_compared(double before, double now, string words) =>
        Assert.Equal(words, TrendAgreement.Words(Read(before, Meter), Read(now, Meter)));

    [Fact]
    public void Another_instrument_brings_its_own_error() =>
        Assert.Contains("Agrees", TrendAgreement.Words(Read(1.50, Meter), Read(1.54, Meter with { Id = "meter-2" })), StringComparison.Ordinal);

    /// <summary>0.4 Ω over the root of the squares of 95.45 % of 0.035 Ω and of 0.039 Ω, each a little wider by the step.</summary>
    [Fact]
    public void Change_between_two_instruments_speaks_of_no_common_error() => Assert.Equal(
        "Changed since the one before, by more than their uncertainties (E\u2099 7.8).",
        TrendAgreement.Words(Read(1.50, Meter), Read(1.90, Meter with { Id = "meter-2" })));

    [Fact]
    public void First_reading_and_a_renewed_part_have_nothing_to_agree_with()
    {
        Assert.Null(TrendAgreement.Words(null, Read(1.5, Meter)));
        Assert.Null(TrendAgreement.Words(Read(1.5, Meter) with { IsOfAnEarlierPart = true }, Read(1.5, Meter)));
    }

    [Fact]
    public void One_instrument_moves_all_readings_and_several_do_not()
    {
        var one = CommonPart.Of([Read(1.5, Meter), Read(1.6, Meter)]);

        Assert.Equal(Coverage.Probability * ((0.01 * 1.6) + 0.02), one, 1e-9);
        Assert.Equal(0, CommonPart.Of([Read(1.5, Meter), Read(1.6, Meter with { Id = "meter-2" })]));
    }

    private static TrendReading Read(double value, Instrument instrument)
    {
        var check = BuiltInSheets.All[0].Find("coil-circuit-resistance")!;
        var scene = Written.Scene(ReadingRecords.Decide(
            Written.Inspection, DecisionRule.NonBinary, new(check, null, [value], null, "typed", instrument, [])));
        var reading = scene.Inspection.Readings[0];
        return new(scene.Inspection, reading, value, reading.Body.Conformity!.ExpandedUncertainty, false);
    }
}
