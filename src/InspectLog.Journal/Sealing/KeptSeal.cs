namespace InspectLog.Journal.Sealing;

/// <summary>A seal as it was found, sound or not.</summary>
/// <param name="Name">The name of its file.</param>
public sealed record KeptSeal(string Name)
{
    /// <summary>The seal; null where the file holds none whose signature holds.</summary>
    public SignedSeal? Sound { get; init; }

    /// <summary>What is wrong with it, in a clause; null where nothing is.</summary>
    public string? Problem { get; init; }

    /// <summary>Its time stamp; null where it has none, or none that holds.</summary>
    public SealStamp? Stamp { get; init; }

    /// <summary>What is wrong with its time stamp, in a clause; null where nothing is.</summary>
    public string? StampProblem { get; init; }

    /// <summary>Reads a seal. Pure.</summary>
    /// <param name="name">The name of its file.</param>
    /// <param name="compact">The text of its file.</param>
    /// <param name="stamp">The file of its time stamp; null where it has none.</param>
    public static KeptSeal Of(string name, string compact, byte[]? stamp)
    {
        try
        {
            var seal = new KeptSeal(name) { Sound = SignedSeal.Read(compact) };
            return stamp is null ? seal : seal.With(stamp);
        }
        catch (FormatException problem)
        {
            return new(name) { Problem = problem.Message };
        }
    }

    /// <summary>The newest last: by entries, then by time. Those that cannot be read come first.</summary>
    public static IReadOnlyList<KeptSeal> InOrder(IEnumerable<KeptSeal> seals) =>
    [
        .. seals.OrderBy(one => one.Sound?.Seal.Count ?? 0)
            .ThenBy(one => one.Sound?.Seal.Time)
            .ThenBy(one => one.Name, StringComparer.Ordinal),
    ];

    private KeptSeal With(byte[] stamp)
    {
        try
        {
            return this with { Stamp = SealStamp.Read(stamp, Sound!) };
        }
        catch (FormatException problem)
        {
            return this with { StampProblem = problem.Message };
        }
    }
}
