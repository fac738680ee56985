namespace InspectLog.Measuring.Tests;

/// <summary>What an instrument's papers do to a reading of it. The figures are worked out beside each check.</summary>
public class AsReadTests
{
    private static readonly Accuracy Stated = new(0.5, 2) { PercentOfRange = 0.1 };

    private static readonly Instrument Meter = new("meter", "Meter", QuantityKind.Resistance, Stated, 0.1)
    {
        Ranges = [new("200 Ω", 200, Stated, 0.1)],
    };

    [Fact]
    public void Share_of_the_range_is_a_fixed_size_of_the_reading()
    {
        var reading = AsRead.Of(Meter, [100]);

        // 0.5 % of 100, 0.1 % of 200, two counts of 0.1.
        Assert.Equal(0.5 + 0.2 + 0.2, reading.Accuracy.HalfWidth(100, 0.1), 12);
        Assert.Null(reading.Correction);
        Assert.Null(reading.Allowances);
    }

    [Theory]
    [InlineData(23, 0.9)]
    [InlineData(18, 0.9)]
    [InlineData(28, 0.9)]
    [InlineData(33, 0.9 * 1.5)] // Five degrees above 28, a tenth of the accuracy for each.
    [InlineData(8, 0.9 * 2)]
    public void Share_of_the_accuracy_is_added_for_each_degree_outside(double ambient, double halfWidth)
    {
        var meter = Meter with { Temperature = new(18, 28) { ShareOfAccuracy = 0.1 } };

        var reading = AsRead.Of(meter, [100], ambient: ambient);

        Assert.Equal(halfWidth, reading.Accuracy.HalfWidth(100, 0.1), 12);
        Assert.Equal(ambient, reading.Ambient);
        Assert.Equal(0.9, AsRead.Of(meter, [100]).Accuracy.HalfWidth(100, 0.1), 12);
    }

    [Fact]
    public void Accuracy_for_each_degree_is_added_term_by_term()
    {
        var meter = Meter with { Temperature = new(18, 28) { PerDegree = new(0.05, 0.2) { PercentOfRange = 0.01 } } };

        // Ten degrees: 0.5 % of 100, 0.1 % of 200 and two counts more.
        Assert.Equal(1.8, AsRead.Of(meter, [100], ambient: 38).Accuracy.HalfWidth(100, 0.1), 12);
    }

    [Theory]
    [InlineData("0.1 x accuracy", "23±5", 18, 28, 0.1)]
    [InlineData("0.1x", "18 to 28", 18, 28, 0.1)]
    [InlineData(".15 × spec.", "18 °C to 28 °C", 18, 28, 0.15)]
    [InlineData("0.1 × the specified accuracy", "-5..40", -5, 40, 0.1)]
    public void Term_for_each_degree_is_read_and_written(string text, string span, double from, double to, double share)
    {
        Assert.True(TemperatureTerm.TryParse(text, span, QuantityKind.Voltage, out var term, out var problem), problem);
        Assert.Equal(new TemperatureTerm(from, to) { ShareOfAccuracy = share }, term);
        Assert.True(TemperatureTerm.TryParse(term.Written(Units.Volt), term.WrittenSpan(), QuantityKind.Voltage, out var again, out _));
        Assert.Equal(term, again);
    }

    [Fact]
    public void Term_may_be_an_accuracy()
    {
        Assert.True(TemperatureTerm.TryParse("0.05% + 2 mV", "23 +/- 2", QuantityKind.Voltage, out var term, out _));
        Assert.Equal(new TemperatureTerm(21, 25) { PerDegree = new(0.05, 0) { Fixed = 0.002 } }, term);
    }

    [Theory]
    [InlineData("0.1x", "warm", "18 to 28")]
    [InlineData("0.1x", "28 to 18", "18 to 28")]
    [InlineData("0.1x", null, "18 to 28")]
    [InlineData("0x", "23±5", "above 0")]
    [InlineData("much", "23±5", "not an accuracy")]
    [InlineData("", "23±5", "missing")]
    public void Term_that_is_none_is_refused_with_the_reason(string text, string? span, string reason)
    {
        Assert.False(TemperatureTerm.TryParse(text, span, QuantityKind.Voltage, out var term, out var problem));
        Assert.Null(term);
        Assert.Contains(reason, problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10, 0.1)]
    [InlineData(100, -0.2)]
    [InlineData(55, -0.05)]
    [InlineData(28, 0.04)]
    [InlineData(9.9, null)]
    [InlineData(100.1, null)]
    public void Correction_runs_straight_between_the_certificate_s_points_and_not_beyond(double reading, double? correction)
    {
        Close.ToDigits(
            correction ?? 7, CalibrationPoint.At([new(10, 0.1), new(100, -0.2)], reading) ?? 7, 12);
    }

    [Fact]
    public void Corrected_reading_has_the_correction_and_the_certificate_s_uncertainty()
    {
        var meter = Meter with { Corrections = [new(10, 0.1), new(100, -0.2)], CertificateUncertainty = 0.06 };

        var estimate = Estimate.Of(AsRead.Of(meter, [55]));

        Assert.Equal(54.95, estimate.Value, 12);
        Assert.Contains(estimate.Contributions, part => part.Name.StartsWith("reference", StringComparison.Ordinal) && part.StandardUncertainty == 0.03);
        var beyond = AsRead.Of(meter, [150]);
        Assert.Equal(150, Estimate.Of(beyond).Value);
        Assert.Null(beyond.Allowances);
    }

    [Fact]
    public void Test_leads_are_corrected_as_the_reading_is()
    {
        var meter = Meter with { Corrections = [new(0, 0.3), new(100, 0.3)] };

        // The same 0.3 Ω is missing from both, so the difference is as read.
        Assert.Equal(50 - 0.2, Estimate.Of(AsRead.Of(meter, [50], leads: 0.2)).Value, 12);
    }

    [Fact]
    public void Instrument_is_overdue_from_the_day_after_it_is_due()
    {
        var meter = Meter with { Due = new(2026, 3, 31) };

        Assert.False(meter.IsOverdue(new(2026, 3, 31)));
        Assert.True(meter.IsOverdue(new(2026, 4, 1)));
        Assert.False(Meter.IsOverdue(new(2026, 4, 1)));
    }

    [Fact]
    public void Instruments_that_say_the_same_are_equal_whatever_lists_they_keep_it_in()
    {
        Instrument Made() => Meter with { Ranges = [new("200 Ω", 200, Stated, 0.1)], Corrections = [new(10, 0.1)] };

        Assert.Equal(Made(), Made());
        Assert.Equal(Made().GetHashCode(), Made().GetHashCode());
        Assert.NotEqual(Made(), Made() with { Corrections = [new(10, 0.2)] });
        Assert.NotEqual(Made(), Made() with { SerialNumber = "7" });
    }
}
