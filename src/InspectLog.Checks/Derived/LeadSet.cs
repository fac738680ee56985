using InspectLog.Measuring;

namespace InspectLog.Checks.Derived;

/// <summary>A plug lead as measured.</summary>
/// <param name="Cylinder">The cylinder it serves.</param>
/// <param name="Resistance">Resistance from end to end in Ω, 0 or more.</param>
/// <param name="Length">Length in m, above 0; null where it was not measured.</param>
public sealed record Lead(int Cylinder, double Resistance, double? Length);

/// <summary>How a lead compares with its class.</summary>
public enum LeadStanding
{
    /// <summary>Within what the class allows.</summary>
    Within,

    /// <summary>Below what the class allows: another kind of lead, or a short to its neighbour.</summary>
    Below,

    /// <summary>Above what the class allows: aged, or broken inside.</summary>
    Above,

    /// <summary>The class speaks of resistance per length, and the length is not known.</summary>
    LengthUnknown,
}

/// <summary>A lead against its class and its neighbours.</summary>
/// <param name="Lead">The lead.</param>
/// <param name="PerMetre">Resistance per length in Ω/m; null where the length is not known.</param>
/// <param name="Lowest">Least resistance the class allows for this lead in Ω; null for none.</param>
/// <param name="Highest">Most resistance the class allows for this lead in Ω; null for none.</param>
/// <param name="Standing">How it compares with its class.</param>
/// <param name="TimesTheOthers">Its resistance per length as a multiple of the median of the other leads; null with
/// fewer than two others of known length, or where that median is 0.</param>
/// <param name="Steps">The working.</param>
public sealed record LeadFigures(
    Lead Lead,
    double? PerMetre,
    double? Lowest,
    double? Highest,
    LeadStanding Standing,
    double? TimesTheOthers,
    IReadOnlyList<Step> Steps);

/// <summary>Compares the leads of an engine with their class and with each other.</summary>
public static class LeadSet
{
    private const int FewestOthers = 2;

    /// <summary>The figures of each lead, in the order given.</summary>
    /// <exception cref="ArgumentException">A resistance or length is out of range, or a cylinder is named
    /// twice.</exception>
    public static IReadOnlyList<LeadFigures> Compare(IReadOnlyList<Lead> leads, LeadClass kind)
    {
        foreach (var lead in leads)
        {
            Sensible.UnlessZeroOrMore(lead.Resistance, $"The resistance of lead {lead.Cylinder} in Ω");
            Sensible.UnlessAboveZero(lead.Length ?? 1, $"The length of lead {lead.Cylinder} in m");
        }

        Sensible.CylindersGivenTwice(leads.Select(lead => lead.Cylinder));
        return [.. leads.Select(lead => Figures(lead, leads, kind))];
    }

    private static LeadFigures Figures(Lead lead, IReadOnlyList<Lead> all, LeadClass kind)
    {
        var steps = new List<Step>();
        var perMetre = PerMetre(lead, steps);
        var lowest = Allowed("Least for this lead", kind.LowestPerMetre, lead.Length, steps);
        var highest = Allowed("Most for this lead", kind.HighestPerMetre, lead.Length, steps);
        highest = kind.HighestTotal is { } total ? Math.Min(total, highest ?? total) : highest;
        return new LeadFigures(
            lead, perMetre, lowest, highest, Standing(lead, lowest, highest, kind), TimesTheOthers(lead, all, steps),
            steps);
    }

    private static double? PerMetre(Lead lead, List<Step> steps)
    {
        if (lead.Length is not { } length)
        {
            return null;
        }

        var perMetre = lead.Resistance / length;
        steps.Add(new("resistance ÷ length",
            [new("Resistance", lead.Resistance, "Ω"), new("Length", length, "m")],
            new("Resistance per length", perMetre, "Ω/m")));
        return perMetre;
    }

    private static double? Allowed(string name, double? perMetre, double? length, List<Step> steps)
    {
        if (perMetre is not { } figure || length is not { } metres)
        {
            return null;
        }

        steps.Add(new("the class's resistance per length × length",
            [new("Resistance per length", figure, "Ω/m"), new("Length", metres, "m")],
            new(name, figure * metres, "Ω")));
        return figure * metres;
    }

    private static LeadStanding Standing(Lead lead, double? lowest, double? highest, LeadClass kind)
    {
        if (lead.Resistance > highest)
        {
            return LeadStanding.Above;
        }

        if (lead.Length is null && (kind.LowestPerMetre is not null || kind.HighestPerMetre is not null))
        {
            return LeadStanding.LengthUnknown;
        }

        return lead.Resistance < lowest ? LeadStanding.Below : LeadStanding.Within;
    }

    private static double? TimesTheOthers(Lead lead, IReadOnlyList<Lead> all, List<Step> steps)
    {
        var others = all.Where(other => other != lead && other.Length is not null)
            .Select(other => other.Resistance / other.Length!.Value).ToList();
        if (lead.Length is not { } length || others.Count < FewestOthers || Outliers.Median(others) is not (> 0 and var median))
        {
            return null;
        }

        var times = lead.Resistance / length / median;
        steps.Add(new("resistance per length ÷ median of the other leads",
            [new("Resistance per length", lead.Resistance / length, "Ω/m"), new("Median of the others", median, "Ω/m")],
            new("Times the others", times, "")));
        return times;
    }
}
