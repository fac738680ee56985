using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Record;

/// <summary>The kept journal that the tests of the scan change, and what they change it with.</summary>
internal static class ScannedJournal
{
    public static readonly byte[] Bytes = TestData.Bytes("entries.jsonl");
    public static readonly int[] LineEnds = [.. Enumerable.Range(0, Bytes.Length).Where(at => Bytes[at] == '\n')];
    public static readonly string[] Hashes = [.. JournalScan.Of(Bytes).Entries.Select(entry => entry.Hash)];

    public static byte[] Flip(byte[] bytes, int bit)
    {
        var changed = bytes.ToArray();
        changed[bit / 8] ^= (byte)(1 << (bit % 8));
        return changed;
    }

    public static void AssertDamagedAt(int line, byte[] file, string? reason)
    {
        var scan = JournalScan.Of(file);

        Assert.Equal(line - 1, scan.Entries.TakeWhile((entry, at) => entry.Sequence == at + 1 && entry.Sequence < line).Count());
        Assert.Equal(line, scan.Broken!.Line);
        Assert.Equal(reason ?? scan.Broken.Reason, scan.Broken.Reason);
        Assert.False(scan.Broken.IsUnfinished);
    }

    public static string LineOfAnotherProgram(int sequence, string kind, int version, string body, string previous)
    {
        var entry = new JsonObject
        {
            ["actor"] = "Tess",
            ["bodyHash"] = Sha256(Encoding.UTF8.GetBytes(body)), // an empty salt
            ["kind"] = kind,
            ["offset"] = "+00:00",
            ["previous"] = previous,
            ["sequence"] = sequence,
            ["time"] = "2031-01-01T00:00:00.000Z",
            ["version"] = version,
        };
        entry["hash"] = Sha256(Canonical(entry));
        entry["salt"] = "";
        entry["body"] = JsonNode.Parse(body);
        return Encoding.UTF8.GetString(Canonical(entry));
    }

    public static byte[] Canonical(JsonNode node) => CanonicalJson.Of(Encoding.UTF8.GetBytes(node.ToJsonString()));

    public static string Sha256(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static List<string> Lines() => [.. Encoding.UTF8.GetString(Bytes).TrimEnd('\n').Split('\n')];

    public static byte[] Join(IEnumerable<string> lines) =>
        Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => line + "\n")));

    public static string Without(string line, params string[] members)
    {
        var entry = JsonNode.Parse(line)!.AsObject();
        foreach (var member in members)
        {
            entry.Remove(member);
        }

        return Encoding.UTF8.GetString(Canonical(entry));
    }
}
