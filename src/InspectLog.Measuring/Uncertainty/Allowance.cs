namespace InspectLog.Measuring;

/// <summary>An allowance for something the instrument's accuracy does not cover.</summary>
/// <param name="Source">What it allows for.</param>
/// <param name="HalfWidth">How far it may move the reading to either side, base unit, 0 or more.</param>
/// <param name="Shape">How likely the values in between are.</param>
public sealed record Allowance(AllowanceSource Source, double HalfWidth, AllowanceShape Shape = AllowanceShape.Even)
{
    /// <summary>Its line in the budget, with its standard uncertainty (JCGM 100:2008, 4.3).</summary>
    internal Contribution Contribution => Shape switch
    {
        AllowanceShape.Even => Line(Math.Sqrt(3), ContributionShape.Even),
        AllowanceShape.Triangular => Line(Math.Sqrt(6), ContributionShape.Triangular),
        AllowanceShape.TwoStandardDeviations => Line(2, ContributionShape.Normal),
        _ => throw new ArgumentException("The shape of an allowance is even, triangular or two standard deviations."),
    };

    /// <summary>Its name in the budget.</summary>
    internal string Name => Source switch
    {
        AllowanceSource.Method => "method",
        AllowanceSource.Operator => "operator",
        AllowanceSource.TestLeads => "test leads not subtracted",
        AllowanceSource.Temperature => "temperature",
        AllowanceSource.Reference => "reference it was checked against",
        AllowanceSource.Zeroing => "zeroing of the meter",
        _ => throw new ArgumentException("The source of an allowance is not one this program knows."),
    };

    private Contribution Line(double divisor, ContributionShape shape) =>
        new(Name, HalfWidth / divisor, double.PositiveInfinity) { Shape = shape };
}

/// <summary>What an allowance is for.</summary>
public enum AllowanceSource
{
    /// <summary>The way of measuring: contact, parallax, where exactly on the part.</summary>
    Method,

    /// <summary>What another person would have read.</summary>
    Operator,

    /// <summary>The resistance of test leads that was neither nulled nor subtracted.</summary>
    TestLeads,

    /// <summary>The temperature of the part or of the instrument.</summary>
    Temperature,

    /// <summary>The reference the instrument was calibrated against, from its certificate.</summary>
    Reference,

    /// <summary>The display step to which the meter was zeroed, with its test leads together.</summary>
    Zeroing,
}

/// <summary>How likely the values within an allowance are.</summary>
public enum AllowanceShape
{
    /// <summary>All alike (rectangular): divide the half-width by √3 (JCGM 100:2008, 4.3.7).</summary>
    Even,

    /// <summary>Likelier towards the middle (triangular): divide by √6 (4.3.9).</summary>
    Triangular,

    /// <summary>An expanded uncertainty with k = 2, as certificates give it: divide by 2 (4.3.3).</summary>
    TwoStandardDeviations,
}
