using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>Numbers that sound alike but for their ending: thirteen and thirty, nineteen and ninety.</summary>
internal static class Twins
{
    /// <summary>Why a person should look twice at a number outside the limits whose twin lies within them; else null.
    /// </summary>
    public static string? Doubt(decimal number, UnitReading? unit, Check check)
    {
        var whole = decimal.Truncate(number);
        if (Of(whole) is not { } twin || check.Measurand?.Limits is not { } limits
            || Sizes.Of(number, unit, check) is not { } size || Within(limits, size))
        {
            return null;
        }

        return Sizes.Of(number - whole + twin, unit, check) is { Why: SizeDoubt.None } other && Within(limits, other)
            ? $"{whole} sounds like {twin}"
            : null;
    }

    private static bool Within(Limits limits, Size size) =>
        (double)size.Value >= (limits.Lower ?? double.NegativeInfinity) && (double)size.Value <= (limits.Upper ?? double.PositiveInfinity);

    private static decimal? Of(decimal whole) => whole switch
    {
        >= 13 and <= 19 => (whole - 10) * 10,
        30 or 40 or 50 or 60 or 70 or 80 or 90 => whole / 10 + 10,
        _ => null,
    };
}
