namespace InspectLog.Measuring;

/// <summary>Values as read off an instrument, with all that its papers say of them.</summary>
public static class AsRead
{
    /// <summary>The reading: the instrument's accuracy on its range and at the temperature about it, the correction of its
    /// certificate, and the certificate's uncertainty.</summary>
    /// <param name="instrument">The instrument, on the range it was read on.</param>
    /// <param name="values">The values, base unit.</param>
    /// <param name="leads">What the same instrument read with the tips of its leads together, base unit; null for none.</param>
    /// <param name="ambient">The temperature about the instrument, °C; null where it is not known, and then taken as one that
    /// the accuracy is stated for.</param>
    public static DisplayedReading Of(Instrument instrument, IReadOnlyList<double> values, double? leads = null, double? ambient = null)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        ArgumentNullException.ThrowIfNull(values);
        var stated = instrument.Accuracy.On(instrument.LargestRange()?.FullScale);
        var accuracy = ambient is { } temperature && instrument.Temperature is { } term
            ? term.At(stated, temperature).On(instrument.LargestRange()?.FullScale)
            : stated;
        var correction = Correction(instrument, Sample.Of(values).Mean);
        return new(values, accuracy, instrument.Resolution)
        {
            Leads = leads is { } own ? new([own], accuracy, instrument.Resolution, SameInstrument: true) : null,
            Correction = correction - (leads is { } lead ? Correction(instrument, lead).GetValueOrDefault() : 0),
            Allowances = Certificate(instrument, correction),
            Ambient = ambient,
        };
    }

    private static double? Correction(Instrument instrument, double reading) =>
        instrument.Corrections is { } points ? CalibrationPoint.At(points, reading) : null;

    // Beyond the certificate's points nothing of it is applied, and its uncertainty says nothing either.
    private static Allowance[]? Certificate(Instrument instrument, double? correction) =>
        instrument.CertificateUncertainty is { } expanded && (instrument.Corrections is null || correction is not null)
            ? [new(AllowanceSource.Reference, expanded, AllowanceShape.TwoStandardDeviations)]
            : null;
}
