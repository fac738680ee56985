using System.Globalization;

namespace InspectLog.Measuring;

/// <summary>How an expanded uncertainty is found.</summary>
/// <param name="Method">From what.</param>
/// <param name="Coverage">The share of the distribution within ±U, above 0.5 and below 1; 0.9545 is usual, 0.95 and 0.99
/// are common.</param>
public sealed record Evaluation(EvaluationMethod Method, double Coverage)
{
    /// <summary>From the distribution, at 95.45 %.</summary>
    public static Evaluation Default { get; } = new(EvaluationMethod.Distribution, Measuring.Coverage.Probability);

    /// <summary>By the law of propagation and k, at 95.45 %.</summary>
    public static Evaluation Classical { get; } = Default with { Method = EvaluationMethod.Classical };

    /// <summary>The least and the most of a distribution that ±U may be asked to cover, in percent.</summary>
    public const double LeastPercent = 50, MostPercent = 99.9;

    /// <summary>From the distribution, at a coverage in percent. 95.45 is the usual one in full, 2Φ(2) − 1.</summary>
    /// <param name="percent">From 50 to 99.9.</param>
    /// <exception cref="ArgumentException">It is not.</exception>
    public static Evaluation Covering(double percent) => percent is not (>= LeastPercent and <= MostPercent)
        ? throw new ArgumentException("The coverage is in percent, from 50 to 99.9.")
        : percent == UsualPercent ? Default : Default with { Coverage = (double)((decimal)percent / 100) };

    private const double UsualPercent = 95.45;

    /// <summary>Whether it covers what is usual, so that nothing need be said of it.</summary>
    public bool IsUsualCoverage => Coverage == Measuring.Coverage.Probability;

    /// <summary>The coverage in percent, in words: 95.45 %.</summary>
    public string CoverageText() => string.Create(CultureInfo.InvariantCulture, $"{100 * Coverage:0.##} %");
}

/// <summary>The two ways to find an expanded uncertainty.</summary>
public enum EvaluationMethod
{
    /// <summary>From the distribution that the contributions add up to (JCGM 101:2008, without its random draws): t for
    /// repeats, boxes for what is known only to lie between bounds. It covers what it says for any number of readings, and
    /// never falls when a contribution grows.</summary>
    Distribution,

    /// <summary>k times the combined standard uncertainty, k from Student's t with the effective degrees of freedom of the
    /// Welch–Satterthwaite formula (JCGM 100:2008, clause G.4). With two or three readings it covers too little.</summary>
    Classical,
}
