using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Sealing;

/// <summary>What a seal says, as canonical JSON; FORMAT.md describes it.</summary>
internal sealed record SealPayload(
    long Count,
    string First,
    string Head,
    string Program,
    string Record,
    string Time,
    string Vehicle,
    int Version,
    IReadOnlyList<IReadOnlyList<long>> Withheld,
    EarlierSeal? Earlier = null,
    string? Manifest = null)
{
    private const int OnlyVersion = 1;
    private const long MostEntries = 1L << 53; // beyond it JSON numbers do not count one by one
    private const long MostWithheld = 1_000_000; // a forged seal must not fill the memory
    private const int LongestProgram = 100;
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>The payload of a seal.</summary>
    public static byte[] Write(Seal seal)
    {
        var payload = new SealPayload(
            seal.Count,
            seal.First,
            seal.Head,
            seal.Program,
            seal.Record,
            seal.Time.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture),
            seal.Vehicle,
            OnlyVersion,
            Runs(seal.Withheld),
            seal.Earlier,
            seal.Manifest);
        return CanonicalJson.Of(JsonSerializer.SerializeToUtf8Bytes(payload, Options));
    }

    /// <summary>The seal of a payload.</summary>
    /// <exception cref="FormatException">It is no payload of a seal, in a clause.</exception>
    public static Seal Read(byte[] json)
    {
        using var document = CanonicalJson.Parse(json);
        try
        {
            var payload = document.Deserialize<SealPayload>(Options) ?? throw new FormatException("it says nothing");
            var seal = payload.ToSeal();
            Require(json.AsSpan().SequenceEqual(Write(seal)), "what it says is not spelled the way the program writes");
            return seal;
        }
        catch (Exception problem) when (problem is JsonException or NotSupportedException or InvalidOperationException)
        {
            throw new FormatException("what it says has not the members of a seal", problem);
        }
    }

    private Seal ToSeal()
    {
        Require(Version == OnlyVersion, $"it is of version {Version}, which this program does not know");
        Require(Count is >= 1 and <= MostEntries, "it counts no entries");
        Require(VehicleIds.IsId(Vehicle), "the vehicle's id in it is none");
        Require(Program.Length is >= 1 and <= LongestProgram && !Program.Any(char.IsControl), "the program's name in it is none");
        Require(IsHash(First) && IsHash(Head) && (Manifest is null || IsHash(Manifest)), "a hash in it is none");
        Require(Earlier is null || (IsHash(Earlier.Head) && Earlier.Count >= 1 && Earlier.Count <= Count), "the seal before it is none");
        Require(
            DateTimeOffset.TryParseExact(Time, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time),
            "its time is none");
        return new(Vehicle, First, Count, Head, Sequences(), time, Program) { Earlier = Earlier, Manifest = Manifest };
    }

    private List<long> Sequences()
    {
        var (sequences, before) = (new List<long>(), 0L);
        foreach (var run in Withheld)
        {
            Require(run is [_, _] && run[0] > before && run[1] >= run[0] && run[1] <= Count, "its list of withheld entries is none");
            Require(run[1] - run[0] < MostWithheld - sequences.Count, "it withholds more entries than this program can compare");
            for (before = run[0]; before <= run[1]; before++)
            {
                sequences.Add(before);
            }
        }

        return sequences;
    }

    /// <summary>Rising sequences as runs, each the first and the last of it.</summary>
    private static List<IReadOnlyList<long>> Runs(IReadOnlyList<long> sequences)
    {
        var runs = new List<IReadOnlyList<long>>();
        for (var (at, from) = (0, 0); at < sequences.Count; at++)
        {
            if (at + 1 == sequences.Count || sequences[at + 1] != sequences[at] + 1)
            {
                runs.Add([sequences[from], sequences[at]]);
                from = at + 1;
            }
        }

        return runs;
    }

    private static bool IsHash(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new FormatException(otherwise);
        }
    }
}
