using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.App.Trends;

/// <summary>Whether a reading agrees with the one of the inspection before, in words (E_n: ISO 13528).</summary>
public static class TrendAgreement
{
    /// <summary>"Agrees with the one before within their uncertainties (E_n 0.4)."; null where there is none before, or the part
    /// was renewed in between. Where one instrument took both, it is said that its error does not count twice: else two spans
    /// that overlap would seem to belie the words.</summary>
    public static string? Words(TrendReading? before, TrendReading now)
    {
        if (before is null || before.IsOfAnEarlierPart != now.IsOfAnEarlierPart)
        {
            return null;
        }

        var (one, other) = (before.Reading.Body, now.Reading.Body);
        var sameInstrument = one.Instrument is not null && one.Instrument.Id == other.Instrument?.Id;
        var number = EnOf(other.Reading, one.Reading, sameInstrument);
        if (number is not { } en)
        {
            return null;
        }

        var figure = $"(E\u2099 {en.ToString("0.0", CultureInfo.InvariantCulture).Replace('-', '\u2212')})";
        return Math.Abs(en) <= 1 ? $"Agrees with the one before, within their uncertainties {figure}."
            : sameInstrument && now.Reading.Body.Reading is DisplayedReading
                ? $"Changed since the one before: by more than the uncertainty of the difference {figure}. Both were read with the same instrument, whose own error is in both alike."
            : $"Changed since the one before, by more than their uncertainties {figure}.";
    }

    // A journal holds what it holds, and its pages are shown all the same.
    private static double? EnOf(Reading now, Reading before, bool sameInstrument)
    {
        try
        {
            return Agreement.En(now, before, sameInstrument);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
