using System.Text;
using CsCheck;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;
using static InspectLog.Journal.Tests.Record.ScannedJournal;

namespace InspectLog.Journal.Tests.Verification;

/// <summary>The quick way of verifying never takes for sound what the slow way does not, and takes what the program writes.
/// </summary>
public sealed class QuickScanTests
{
    [Fact]
    public void Journal_as_the_program_writes_it_is_read_the_quick_way_with_the_same_facts()
    {
        var lines = Lines();
        lines[3] = Without(lines[3], "body", "salt");
        lines[20] = Without(lines[20], "body", "salt");
        lines.Add(LineOfAnotherProgram(lines.Count + 1, "smell-noted", 4, """{"smell":"petrol"}""", Hashes[^1]));

        var quick = QuickScan.Of(Join(lines));
        var slow = JournalFacts.Of(JournalScan.Of(Join(lines)));

        Assert.NotNull(quick);
        Assert.Equal(slow.Withheld, quick.Withheld);
        Assert.Equal((slow.Unread, slow.Hashes.Count, slow.Hashes.LastHash), (quick.Unread, quick.Hashes.Count, quick.Hashes.LastHash));
        Assert.Equal(1, quick.Unread);
        Assert.Equal(slow.Pointing.Select(entry => entry.Hash), quick.Pointing.Select(entry => entry.Hash));
        Assert.All(Hashes.Index(), hash => Assert.Equal(hash.Item, quick.Hashes.At(hash.Index + 1)));
        Assert.Null(quick.Hashes.At(0));
        Assert.Null(quick.Hashes.At(lines.Count + 1));
    }

    [Fact]
    public void Old_journals_are_read_the_quick_way() => Assert.All(
        Directory.GetFiles(Path.GetDirectoryName(TestData.PathOf("before-amendments", "readings.csv"))!, "*.jsonl", SearchOption.AllDirectories),
        file => Assert.NotNull(QuickScan.Of(File.ReadAllBytes(file))));

    [Fact]
    public void Any_flipped_bit_makes_the_quick_way_step_back()
    {
        var journal = Bytes[..(LineEnds[9] + 1)];
        Assert.NotNull(QuickScan.Of(journal));
        for (var bit = 0; bit < journal.Length * 8; bit++)
        {
            Assert.Null(QuickScan.Of(Flip(journal, bit)));
        }
    }

    [Fact]
    public void Lines_cut_swapped_doubled_or_taken_out_make_the_quick_way_step_back() =>
        Gen.Int[0, Hashes.Length - 1].Select(Gen.Int[0, Hashes.Length - 1], Gen.Int[0, 3]).Sample((one, other, what) =>
        {
            var lines = Lines();
            switch (what)
            {
                case 0:
                    lines.RemoveAt(Math.Min(one, lines.Count - 2));
                    break;
                case 1:
                    lines.Insert(one, lines[other]);
                    break;
                case 2:
                    lines[one] = lines[one][..(lines[one].Length / 2)];
                    break;
                default:
                    (lines[one], lines[other]) = (lines[other], lines[one]);
                    break;
            }

            Assert.Equal(JournalScan.Of(Join(lines)).Damage.IsEmpty, QuickScan.Of(Join(lines)) is not null);
        });

    /// <summary>The hashes are made of the text as it stands, so that nothing but its spelling gives it away.</summary>
    [Theory]
    [InlineData("""{"b":1,"a":2}""")]
    [InlineData("""{"a":1,"a":1}""")]
    [InlineData("""{"a": 1}""")]
    [InlineData("""{"a":1.0}""")]
    [InlineData("""{"a":-0}""")]
    [InlineData("""{"a":1e2}""")]
    [InlineData("""{"a":1e21}""")]
    [InlineData("""{"a":0.0000001}""")]
    [InlineData("""{"a":1.50}""")]
    [InlineData("""{"a":01}""")]
    [InlineData("""{"a":.5}""")]
    [InlineData("""{"a":+5}""")]
    [InlineData("""{"a":1e999}""")]
    [InlineData("""{"a":0.1000000000000000055}""")]
    [InlineData("""{"a":9007199254740993}""")]
    [InlineData("""{"a":"\u0041"}""")]
    [InlineData("""{"a":"\/"}""")]
    [InlineData("""{"a":"\u000A"}""")]
    [InlineData("""{"a":"\u001F"}""")]
    [InlineData("""{"a":"\ud800"}""")]
    [InlineData("""{"é":1,"a":2}""")]
    [InlineData("""{"a":[1,]}""")]
    [InlineData("""{"a":tru}""")]
    [InlineData("""{"a":1}}""")]
    public void Body_in_another_spelling_is_not_sound_by_either_way(string body)
    {
        var line = Encoding.UTF8.GetBytes(LineWithRawBody(body) + "\n");

        Assert.Null(QuickScan.Of(line));
        Assert.NotEmpty(JournalScan.Of(line).Damage);
    }

    [Theory]
    [InlineData("""{"a":0,"b":-0.5,"c":1e+21,"d":1e-7,"e":0.000001,"f":123456789012345,"g":0.9999999999999998,"h":100000000000000000000}""")]
    [InlineData("""{"":[[],{},null,true,false],"A":"\u000b\u001f\"\\\b\t\n\f\r/","a":"Ω 🔧"}""")]
    public void Body_in_the_canonical_spelling_is_sound_by_both_ways(string body)
    {
        var line = Encoding.UTF8.GetBytes(LineWithRawBody(body) + "\n");

        Assert.NotNull(QuickScan.Of(line));
        Assert.Empty(JournalScan.Of(line).Damage);
    }

    [Fact]
    public void What_the_quick_way_takes_for_canonical_is_canonical() =>
        Gen.Char["{}[]\":,0123456789.-+eEtrufalsn\\/ab é\u0001"].Array[1, 12].Sample(
            signs =>
            {
                var bytes = Encoding.UTF8.GetBytes(signs);
                if (CanonicalBytes.EndOfValue(bytes, 0) == bytes.Length)
                {
                    Assert.Equal(bytes, CanonicalJson.Of(bytes));
                }
            },
            iter: 200_000);

    [Fact]
    public void Every_double_in_its_shortest_spelling_is_taken() => Gen.Double.Where(double.IsFinite).Sample(number =>
    {
        var bytes = Encoding.UTF8.GetBytes(EcmaNumber.Format(number));
        Assert.Equal(bytes.Length, CanonicalBytes.EndOfValue(bytes, 0));
    });

    [Fact]
    public void What_nests_deeper_than_the_slow_way_goes_is_left_to_it()
    {
        var deep = Encoding.UTF8.GetBytes(new string('[', 70) + new string(']', 70));

        Assert.Equal(-1, CanonicalBytes.EndOfValue(deep, 0));
    }

    private static string LineWithRawBody(string body)
    {
        var head = Without(LineOfAnotherProgram(1, "note", 1, "{}", EntryLine.NoPrevious), "body", "hash", "salt");
        head = System.Text.RegularExpressions.Regex.Replace(head, "\"bodyHash\":\"[0-9a-f]*\"", $"\"bodyHash\":\"{Sha256(Encoding.UTF8.GetBytes(body))}\"");
        var hash = Sha256(Encoding.UTF8.GetBytes(head));
        return head
            .Replace(",\"bodyHash\"", $",\"body\":{body},\"bodyHash\"", StringComparison.Ordinal)
            .Replace(",\"kind\"", $",\"hash\":\"{hash}\",\"kind\"", StringComparison.Ordinal)
            .Replace(",\"sequence\"", ",\"salt\":\"\",\"sequence\"", StringComparison.Ordinal);
    }
}
