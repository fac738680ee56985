using InspectLog.App.Ui;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>What stands in the fields of an instrument's form before anything is typed: what is on file, in the base unit of
/// its kind.</summary>
public static class InstrumentFilled
{
    /// <summary>The text of a field; empty for a new instrument.</summary>
    public static string Of(Instrument? instrument, string field)
    {
        if (instrument is null)
        {
            return "";
        }

        var unit = Units.BaseOf(instrument.Kind);
        return field switch
        {
            "name" => instrument.Name,
            "unit" => unit.Symbol,
            "accuracy" => instrument.WrittenAccuracy(),
            "resolution" => Numbers.Plain(instrument.Resolution),
            "fullScale" => Numbers.Plain(First(instrument)?.FullScale),
            "moreRanges" => string.Join('\n', (instrument.Ranges ?? []).Where(range => range != First(instrument))
                .Select(range => $"{Numbers.Plain(range.FullScale)}; {Numbers.Plain(range.Resolution)}; {range.Accuracy.Written(unit)}")),
            "serial" => instrument.SerialNumber ?? "",
            "calibrated" => instrument.Calibrated is { } day ? Times.Machine(day) : "",
            "due" => instrument.Due is { } day ? Times.Machine(day) : "",
            "statedFor" => instrument.Temperature?.WrittenSpan() ?? "",
            "perDegree" => instrument.Temperature?.Written(unit) ?? "",
            "corrections" => string.Join('\n', (instrument.Corrections ?? [])
                .Select(point => $"{Numbers.Plain(point.Reading)}; {Numbers.Plain(point.Correction)}")),
            "certificate" => Numbers.Plain(instrument.CertificateUncertainty),
            _ => "",
        };
    }

    // The first range is the one whose step and accuracy have fields of their own.
    private static MeterRange? First(Instrument instrument) => instrument.Ranges is not [_, ..] ranges
        ? null
        : ranges.FirstOrDefault(range => (range.Accuracy, range.Resolution) == (instrument.Accuracy, instrument.Resolution)) ?? ranges[0];
}
