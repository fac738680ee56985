using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Record;

public sealed class EntryLineTests
{
    private static readonly byte[] Salt = [.. Enumerable.Range(0, 16).Select(n => (byte)n)];

    /// <summary>A change of these bytes means that journals written before no longer read the same. A new kind or
    /// version adds a line; no line ever changes.</summary>
    [Fact]
    public void One_entry_of_each_kind_is_written_byte_for_byte_as_ever()
    {
        var expected = Encoding.UTF8.GetString(TestData.Bytes("entries.jsonl")).Split('\n');

        var written = Lines(Some.OneOfEachKind);

        Assert.All(written.Zip(expected), pair => Assert.Equal(pair.Second, pair.First));
        Assert.Equal(written.Count + 1, expected.Length); // the last line has its end
    }

    [Fact]
    public void Golden_file_reads_back_to_the_bodies_it_was_written_from()
    {
        var scan = JournalScan.Of(TestData.Bytes("entries.jsonl"));

        Assert.Null(scan.Broken);
        Assert.Equal(Today.Select(body => body.GetType()), scan.Entries.Select(e => e.Body!.GetType()));
        Assert.Equal(Today.Select(BodyJson.Write), scan.Entries.Select(entry => BodyJson.Write(entry.Body!)));
    }

    [Fact]
    public void Every_kind_has_a_sample() =>
        Assert.Equal(
            EntryKinds.All.OrderBy(kind => kind.Name, StringComparer.Ordinal),
            Some.OneOfEachKind.Select(body => body.GetType()).Distinct().OrderBy(kind => kind.Name, StringComparer.Ordinal));

    [Fact]
    public void Format_page_tells_of_every_kind_and_member()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "FORMAT.md"));
        var scan = File.ReadLines(TestData.PathOf("entries.jsonl")).Select(line => JsonNode.Parse(line)!);

        Assert.All(scan, entry =>
        {
            Assert.Contains($"`{entry["kind"]}`", page, StringComparison.Ordinal);
            Assert.All(MembersOf(entry), member => Assert.Contains($"`{member}`", page, StringComparison.Ordinal));
        });

        static IEnumerable<string> MembersOf(JsonNode? node) => node switch
        {
            JsonObject o => o.SelectMany(member => MembersOf(member.Value).Prepend(member.Key)),
            JsonArray a => a.SelectMany(MembersOf),
            _ => [],
        };
    }

    [Fact]
    public void Device_is_part_of_what_the_hash_covers()
    {
        var line = EntryLine.Write(1, Some.Clock().GetLocalNow(), new("Tess Okafor", "Tess’s phone"), Some.Vehicle(), EntryLine.NoPrevious, Salt);

        Assert.Equal("Tess’s phone", EntryLine.Read(line).Device);
        var another = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(line).Replace("’s phone", "’s watch", StringComparison.Ordinal));
        Assert.Throws<FormatException>(() => EntryLine.Read(another));
        Assert.Contains("`device`", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "FORMAT.md")), StringComparison.Ordinal);
    }

    /// <summary>The recipe of FORMAT.md, followed with nothing but the platform's own JSON and SHA-256.</summary>
    [Fact]
    public void Hashes_can_be_checked_without_this_program()
    {
        var plain = new JsonSerializerOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        var previous = new string('0', 64);
        foreach (var line in File.ReadLines(TestData.PathOf("entries.jsonl")).Take(7))
        {
            var entry = JsonNode.Parse(line)!.AsObject();
            byte[] salted =
            [
                .. Convert.FromBase64String((string)entry["salt"]!),
                .. Encoding.UTF8.GetBytes(entry["body"]!.ToJsonString(plain)),
            ];
            var hash = (string)entry["hash"]!;
            entry.Remove("body");
            entry.Remove("salt");
            entry.Remove("hash");

            Assert.Equal((string)entry["bodyHash"]!, Convert.ToHexStringLower(SHA256.HashData(salted)));
            Assert.Equal(previous, (string)entry["previous"]!);
            Assert.Equal(hash, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(entry.ToJsonString(plain)))));
            previous = hash;
        }
    }

    [Fact]
    public void Infinite_degrees_of_freedom_are_written_as_null_and_read_back()
    {
        var reading = Some.OneOfEachKind.OfType<ReadingDecided>().First();

        var json = Encoding.UTF8.GetString(BodyJson.Write(reading));
        using var document = JsonDocument.Parse(json);
        var back = (ReadingDecided)BodyJson.Read("reading-decided", 1, document.RootElement)!;

        Assert.Contains("\"degreesOfFreedom\":null", json, StringComparison.Ordinal);
        Assert.Equal(double.PositiveInfinity, back.Conformity!.Contributions[0].DegreesOfFreedom);
        Assert.Equal(1, back.Conformity.Contributions[1].DegreesOfFreedom);
    }

    [Theory]
    [InlineData("reading-dreamt", 1, """{"value":3}""")]
    [InlineData("note-written", 2, """{"inspection":7,"text":"x"}""")]
    [InlineData("note-written", 1, """{"inspection":7,"text":"x","mood":"good"}""")]
    [InlineData("note-written", 1, """{"inspection":7}""")]
    [InlineData("note-written", 1, """{"inspection":7,"text":null}""")]
    [InlineData("note-written", 1, """{"inspection":"7","text":"x"}""")]
    [InlineData("note-written", 1, "[]")]
    [InlineData("vehicle-added", 1, """{"name":"a","description":"","engine":{"cylinders":6,"firingOrder":[],"rotation":1}}""")]
    public void Body_this_program_cannot_read_is_not_guessed_at(string kind, int version, string json)
    {
        using var document = JsonDocument.Parse(json);

        Assert.Null(BodyJson.Read(kind, version, document.RootElement));
    }

    [Fact]
    public void Member_that_may_be_absent_reads_as_null()
    {
        using var document = JsonDocument.Parse("""{"inspection":7,"text":"x"}""");

        Assert.Equal(new NoteWritten(7, null, "x"), BodyJson.Read("note-written", 1, document.RootElement));
    }

    [Fact]
    public void Text_that_is_not_Unicode_is_kept_with_a_mark_in_its_place()
    {
        var json = Encoding.UTF8.GetString(BodyJson.Write(new NoteWritten(0, null, "a\ud800b")));

        Assert.Contains("a\ufffdb", json, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-03:30")]
    [InlineData("+00:00")]
    [InlineData("+13:45")]
    public void Time_is_written_in_UTC_with_the_offset_beside_it(string offset)
    {
        var now = DateTimeOffset.Parse("2026-02-28T23:59:59.999" + offset, CultureInfo.InvariantCulture);

        var line = EntryLine.Write(1, now, Some.Technician, new LooseEndTied(3), EntryLine.NoPrevious, Salt);
        var back = EntryLine.Read(line);

        Assert.Contains($"\"offset\":\"{offset}\"", Encoding.UTF8.GetString(line), StringComparison.Ordinal);
        Assert.Equal(now.Offset, back.Offset);
        Assert.Equal(TimeSpan.Zero, back.Time.Offset);
        Assert.Equal(now, back.LocalTime);
    }

    /// <summary>What stands in the golden file, in the versions that are written now.</summary>
    private static IEnumerable<EntryBody> Today => Some.OneOfEachKind.Select(body => body is IFormerBody former ? former.Today() : body);

    private static List<string> Lines(IReadOnlyList<EntryBody> bodies)
    {
        var lines = new List<string>();
        var previous = EntryLine.NoPrevious;
        foreach (var body in bodies)
        {
            var line = EntryLine.Write(lines.Count + 1, Some.Clock().GetLocalNow(), Some.Technician, body, previous, Salt);
            previous = EntryLine.Read(line).Hash;
            lines.Add(Encoding.UTF8.GetString(line));
        }

        return lines;
    }
}
