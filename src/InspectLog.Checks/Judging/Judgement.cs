namespace InspectLog.Checks.Judging;

/// <summary>What the observations of a place add up to. The order is from best to worst, after
/// <see cref="Unsaid"/>.</summary>
public enum Judgement
{
    /// <summary>Nobody has said anything about the place yet.</summary>
    Unsaid,

    /// <summary>It was looked at and nothing was found wrong.</summary>
    Good,

    /// <summary>It works but needs attention.</summary>
    Attention,

    /// <summary>It has failed its check.</summary>
    Bad,
}

/// <summary>The judgement of one place of a check.</summary>
/// <param name="Cylinder">The cylinder the place serves; null for a check done once.</param>
/// <param name="Judgement">What its observations add up to.</param>
public sealed record PlaceJudgement(int? Cylinder, Judgement Judgement);
