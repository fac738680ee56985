using InspectLog.Measuring;

namespace InspectLog.Checks;

/// <summary>Limits for one check of one vehicle that stand in for those of the sheet, with where they come from:
/// the vehicle's manual wins over common practice.</summary>
public sealed record LimitOverride
{
    /// <summary>States limits for a check.</summary>
    /// <param name="checkId">Id of a measured check.</param>
    /// <param name="limits">The limits, base unit of the check's kind.</param>
    /// <param name="source">Where they come from: "Workshop manual 1974, page 12-3".</param>
    /// <param name="nominal">The target value given by the same source, base unit; null where it gives none.</param>
    /// <exception cref="ArgumentException">No source is stated, or the nominal value is not within the limits. The
    /// message is written for the person who typed them.</exception>
    public LimitOverride(string checkId, Limits limits, string source, double? nominal = null)
    {
        if (string.IsNullOrWhiteSpace(source))
        {
            throw new ArgumentException("Say where these limits come from, such as the manual and its page.");
        }

        if (nominal is { } value && (!double.IsFinite(value) || value < limits.Lower || value > limits.Upper))
        {
            throw new ArgumentException("The nominal value must lie within the limits.");
        }

        (CheckId, Limits, Source, Nominal) = (checkId, limits, source.Trim(), nominal);
    }

    /// <summary>Id of the check.</summary>
    public string CheckId { get; }

    /// <summary>The limits, base unit.</summary>
    public Limits Limits { get; }

    /// <summary>Where the limits come from.</summary>
    public string Source { get; }

    /// <summary>Target value, base unit; null where the source gives none.</summary>
    public double? Nominal { get; }

    /// <summary>The check with these limits, source and nominal value in place of the sheet's. The sheet's own nominal
    /// value goes with its limits, and the plausible span widens where it would not hold the new ones. They are limits of
    /// the reading itself, so it is no longer compared with that of another check.</summary>
    /// <exception cref="ArgumentException">The check is another one, or is not measured.</exception>
    public Check ApplyTo(Check check)
    {
        if (check.Id != CheckId)
        {
            throw new ArgumentException($"These limits are for {CheckId}, not for {check.Id}.");
        }

        var measurand = check.Measurand
            ?? throw new ArgumentException($"{check.Title} is not measured, so it has no limits to set.");
        return check with
        {
            Measurand = measurand with
            {
                Limits = Limits,
                LimitSource = Source,
                Nominal = Nominal,
                DecidedBy = measurand.DecidedBy is { } by ? by with { IsOverruled = true } : null,
                Plausible = new PlausibleSpan(
                    Math.Min(measurand.Plausible.From, Limits.Lower ?? Limits.Upper!.Value),
                    Math.Max(measurand.Plausible.To, Limits.Upper ?? Limits.Lower!.Value)),
            },
        };
    }

    /// <summary>The checks of a sheet as they count for one vehicle: with its own limits where it has some. The last
    /// word on a check stands; limits for checks that the sheet does not have belong to others and are left aside.
    /// </summary>
    public static CheckSheet ApplyAll(CheckSheet sheet, IEnumerable<LimitOverride> overrides)
    {
        var lastWord = overrides.GroupBy(one => one.CheckId).ToDictionary(group => group.Key, group => group.Last());
        return sheet with
        {
            Checks = [.. sheet.Checks.Select(check =>
                lastWord.TryGetValue(check.Id, out var limits) ? limits.ApplyTo(check) : check)],
        };
    }
}
