namespace InspectLog.Archives.Zip;

/// <summary>How much a ZIP from a stranger may hold.</summary>
/// <param name="Entries">Most files and folders.</param>
/// <param name="Bytes">Most bytes of all files together, unpacked.</param>
/// <param name="Ratio">How many times its own size it may become.</param>
public sealed record ZipBounds(int Entries, long Bytes, int Ratio)
{
    /// <summary>Far more than a vehicle of a lifetime has: a hundred thousand files, a terabyte, two hundred times.</summary>
    public static ZipBounds Usual { get; } = new(100_000, 1L << 40, 200);

    /// <summary>Bytes that one line of a ZIP's list of files may take on the average.</summary>
    internal const int DirectoryEntry = 400;
}
