namespace InspectLog.Measuring;

/// <summary>How likely the values within a contribution are.</summary>
public enum ContributionShape
{
    /// <summary>All alike within bounds (rectangular, JCGM 100:2008, 4.3.7).</summary>
    Even,

    /// <summary>Likelier towards the middle, within bounds (triangular, 4.3.9).</summary>
    Triangular,

    /// <summary>Normal, its standard deviation taken as known.</summary>
    Normal,

    /// <summary>Student's t: normal, with a standard deviation found from a few readings (JCGM 101:2008, 6.4.9).</summary>
    Student,
}
