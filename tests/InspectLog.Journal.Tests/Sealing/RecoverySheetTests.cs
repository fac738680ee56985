using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

public sealed class RecoverySheetTests : IDisposable
{
    private readonly SealKey _key = SealKey.Make();

    private IReadOnlyList<string> Sheet => RecoverySheet.Write(_key);

    public void Dispose() => _key.Dispose();

    [Fact]
    public void Sheet_typed_in_gives_the_key_back()
    {
        using var restored = RecoverySheet.Read(string.Join('\n', Sheet));

        Assert.Equal(_key.Public.Fingerprint, restored.Public.Fingerprint);
        Assert.True(_key.Public.Verify([1, 2, 3], restored.Sign([1, 2, 3])));
    }

    [Fact]
    public void Sheet_has_nine_lines_of_twelve_digits_in_groups_of_four()
    {
        Assert.Equal(RecoverySheet.Lines, Sheet.Count);
        Assert.All(Sheet, line => Assert.Matches(@"^\d{4} \d{4} \d{4}$", line));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("-")]
    [InlineData("\r\n\r\n")]
    [InlineData("\t.")]
    public void Blanks_hyphens_and_line_ends_do_not_matter(string between)
    {
        using var restored = RecoverySheet.Read(between + string.Join(between, Sheet.Select(line => line.Replace(" ", between, StringComparison.Ordinal))) + between);

        Assert.Equal(_key.Public.Fingerprint, restored.Public.Fingerprint);
    }

    [Fact]
    public void Every_wrong_digit_is_found_and_its_line_named()
    {
        var digits = string.Concat(Sheet).Replace(" ", "", StringComparison.Ordinal);
        for (var at = 0; at < digits.Length; at++)
        {
            foreach (var other in "0123456789".Where(digit => digit != digits[at]))
            {
                Assert.Equal(at / 12 + 1, LineNamed(digits[..at] + other + digits[(at + 1)..]));
            }
        }
    }

    [Fact]
    public void Every_two_neighbours_swapped_are_found_and_their_line_named()
    {
        var digits = string.Concat(Sheet).Replace(" ", "", StringComparison.Ordinal);
        for (var at = 0; at + 1 < digits.Length; at++)
        {
            if (digits[at] != digits[at + 1])
            {
                Assert.Equal(at / 12 + 1, LineNamed(digits[..at] + digits[at + 1] + digits[at] + digits[(at + 2)..]));
            }
        }
    }

    [Fact]
    public void Every_two_lines_swapped_are_found()
    {
        for (var one = 0; one < RecoverySheet.Lines; one++)
        {
            for (var other = one + 1; other < RecoverySheet.Lines; other++)
            {
                var lines = Sheet.ToList();
                if (lines[one] != lines[other])
                {
                    (lines[one], lines[other]) = (lines[other], lines[one]);
                    Assert.Throws<SealKeyException>(() => RecoverySheet.Read(string.Join('\n', lines)));
                }
            }
        }
    }

    [Fact]
    public void Line_left_out_or_typed_twice_is_found()
    {
        Assert.Contains("fewer lines", Refusal(string.Join('\n', Sheet.Take(8))), StringComparison.Ordinal);
        Assert.Contains("more lines", Refusal(string.Join('\n', [.. Sheet, Sheet[8]])), StringComparison.Ordinal);
        Assert.Contains("fewer lines", Refusal(""), StringComparison.Ordinal);
        Assert.Equal(9, LineNamed(string.Join('\n', Sheet)[..^1]));
    }

    [Theory]
    [InlineData("O")]
    [InlineData("l")]
    [InlineData("٣")] // a digit, but of another script
    public void Letter_among_the_digits_is_told(string letter)
    {
        Assert.Contains($"\"{letter}\" is none", Refusal(string.Join('\n', Sheet) + letter), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_of_two_sheets_do_not_make_a_key()
    {
        using var other = SealKey.Make();

        Assert.Contains("not the whole", Refusal(string.Join('\n', [Sheet[0], .. RecoverySheet.Write(other).Skip(1)])), StringComparison.Ordinal);
    }

    [Fact]
    public void Number_of_no_key_is_refused()
    {
        var zero = Enumerable.Range(1, RecoverySheet.Lines).Select(number => RecoveryLine.Write(number, 0));
        var beyond = Enumerable.Range(1, RecoverySheet.Lines).Select(number => RecoveryLine.Write(number, uint.MaxValue));

        Assert.Contains("No key", Refusal(string.Join('\n', zero)), StringComparison.Ordinal);
        Assert.Contains("No key", Refusal(string.Join('\n', beyond)), StringComparison.Ordinal);
    }

    /// <summary>ISO 7064, MOD 97-10, is the check of account numbers as well: of GB82 WEST 1234 5698 7654 32, the example of the
    /// registry of these numbers (from memory), the digits are those of 3214282912345698765432161182, which leave 1.</summary>
    [Fact]
    public void Check_is_the_one_that_leaves_1_by_97()
    {
        Assert.Equal(1, (int)(UInt128.Parse("3214282912345698765432161182", System.Globalization.CultureInfo.InvariantCulture) % 97));
        var line = RecoveryLine.Write(3, 4_294_967_295).Replace(" ", "", StringComparison.Ordinal);
        Assert.Equal(1, (int)(long.Parse("3" + line, System.Globalization.CultureInfo.InvariantCulture) % 97));
        Assert.Equal(4_294_967_295, RecoveryLine.Read(3, line));
    }

    private static string Refusal(string typed) => Assert.Throws<SealKeyException>(() => RecoverySheet.Read(typed)).Message;

    private static int LineNamed(string typed)
    {
        var message = Refusal(typed);
        Assert.StartsWith("Line ", message, StringComparison.Ordinal);
        return message[5] - '0';
    }
}
