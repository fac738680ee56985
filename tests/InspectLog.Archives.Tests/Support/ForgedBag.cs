using System.Security.Cryptography;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace InspectLog.Archives.Tests.Support;

/// <summary>A bag whose journal was changed, with all that stands around it made anew, as somebody with care would.</summary>
internal static class ForgedBag
{
    /// <summary>The three ways to go unseen.</summary>
    public static void Forge(string bag, string how, string otherJournal)
    {
        var journal = Path.Combine(bag, "data", "journal.jsonl");
        switch (how)
        {
            case "cut":
                File.WriteAllText(journal, string.Join('\n', File.ReadAllLines(journal)[..^1]) + "\n");
                break;
            case "replaced" or "rewritten":
                File.Copy(otherJournal, journal, overwrite: true);
                break;
            default:
                throw new ArgumentException(how, nameof(how));
        }

        MakeAnew(bag);
    }

    /// <summary>Writes what the bag says of itself and its manifests anew, to match what is in it now.</summary>
    public static void MakeAnew(string bag)
    {
        var lines = File.ReadAllLines(Path.Combine(bag, "data", "journal.jsonl"));
        var payload = Files(bag).Where(file => file.StartsWith("data/", StringComparison.Ordinal)).ToList();
        var info = File.ReadAllText(Path.Combine(bag, "bag-info.txt"));
        info = Said(info, "External-Identifier", HashOf(lines[0]));
        info = Said(info, "InspectLog-Journal-Head", HashOf(lines[^1]));
        info = Said(info, "InspectLog-Journal-Entries", FormattableString.Invariant($"{lines.Length}"));
        info = Said(info, "Payload-Oxum", FormattableString.Invariant($"{payload.Sum(file => new FileInfo(Path.Combine(bag, file)).Length)}.{payload.Count}"));
        File.WriteAllText(Path.Combine(bag, "bag-info.txt"), info);
        Write("manifest-sha256.txt", payload);
        Write("tagmanifest-sha256.txt", Files(bag).Where(file => !file.StartsWith("data/", StringComparison.Ordinal) && file != "tagmanifest-sha256.txt"));

        void Write(string name, IEnumerable<string> files) => File.WriteAllText(
            Path.Combine(bag, name), string.Concat(files.Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(bag, file))))}  {file}\n")));
    }

    private static string Said(string info, string label, string value) => Regex.Replace(info, $"{label}: .*", $"{label}: {value}");

    private static string HashOf(string line)
    {
        using var entry = JsonDocument.Parse(line);
        return entry.RootElement.GetProperty("hash").GetString()!;
    }

    private static List<string> Files(string bag) =>
    [
        .. Directory.GetFiles(bag, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(bag, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];
}
