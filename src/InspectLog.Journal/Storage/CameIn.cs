using System.Text.Json;

namespace InspectLog.Journal.Storage;

/// <summary>Which entries of a journal came in from elsewhere, as runs of sequences. Kept in a file beside the journal, since
/// an entry of its own would make the journal part from the one it came from.</summary>
/// <param name="Runs">The runs, rising: first and last.</param>
internal sealed record CameIn(IReadOnlyList<(long First, long Last)> Runs)
{
    private const string FileName = "came-in.json";

    /// <summary>All of it was written here.</summary>
    public static CameIn None { get; } = new([]);

    /// <summary>What stands beside a journal. A file that cannot be read says that nothing came in: recordings are read then
    /// that could have waited.</summary>
    /// <param name="vehicleFolder">The vehicle's folder.</param>
    public static CameIn In(string vehicleFolder)
    {
        try
        {
            var path = Path.Combine(vehicleFolder, FileName);
            var runs = File.Exists(path) ? JsonSerializer.Deserialize<long[][]>(File.ReadAllBytes(path)) ?? [] : [];
            return new([.. runs.Where(run => run.Length == 2).Select(run => (run[0], run[1]))]);
        }
        catch (Exception problem) when (DiskFailure.Is(problem) || problem is JsonException)
        {
            return None;
        }
    }

    /// <summary>Whether an entry came in.</summary>
    public bool Has(long sequence) => Runs.Any(run => run.First <= sequence && sequence <= run.Last);

    /// <summary>These and further ones.</summary>
    public CameIn With(long first, long last) => new([.. Runs, (first, last)]);

    /// <summary>Writes the file.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    public void Keep(string vehicleFolder, IDurable durable) => WholeFile.Write(
        durable, Path.Combine(vehicleFolder, FileName), JsonSerializer.SerializeToUtf8Bytes(Runs.Select(run => new[] { run.First, run.Last })));
}
