using CsCheck;
using InspectLog.Archives.Making;

namespace InspectLog.Archives.Tests.Making;

public sealed class CsvTextTests
{
    [Theory]
    [InlineData("plain words", "plain words")]
    [InlineData("with, comma", "\"with, comma\"")]
    [InlineData("said \"so\"", "\"said \"\"so\"\"\"")]
    [InlineData("two\r\nlines", "\"two\r\nlines\"")]
    [InlineData(" spaces ", "\" spaces \"")]
    [InlineData("=1+1", "\"'=1+1\"")]
    [InlineData("+49 30", "\"'+49 30\"")]
    [InlineData("-0.5 dead", "\"'-0.5 dead\"")]
    [InlineData("@SUM(A1)", "\"'@SUM(A1)\"")]
    [InlineData("\t=1", "\"'\t=1\"")]
    [InlineData("a;=1", "\"a;'=1\"")]
    [InlineData("\uFF1D1", "\"'\uFF1D1\"")]
    [InlineData("", "")]
    public void Text_is_quoted_where_it_must_be_and_never_a_formula(string text, string cell) =>
        Assert.Equal(cell + "\r\n", CsvText.Line([text]));

    [Fact]
    public void Numbers_are_numbers_also_below_zero_and_what_is_none_is_empty() =>
        Assert.Equal("-0.5,1E+30,7,,,\r\n", CsvText.Line([-0.5, 1e30, 7, double.NaN, double.PositiveInfinity, null]));

    [Fact]
    public void Every_text_comes_back_as_it_was_but_for_apostrophes_and_begins_no_formula() => Gen.String.Array[1, 5].Sample(texts =>
    {
        var cells = Read(CsvText.Line(texts));

        Assert.Equal(texts.Select(text => text.Replace("'", "", StringComparison.Ordinal)), cells.Select(cell => cell.Replace("'", "", StringComparison.Ordinal)));
        Assert.All(cells, cell => Assert.False(cell.TrimStart() is ['=' or '+' or '-' or '@', ..]));
    });

    /// <summary>One line by the grammar of RFC 4180, 2.</summary>
    private static List<string> Read(string line)
    {
        var cells = new List<string>();
        for (var at = 0; ; at++)
        {
            var cell = "";
            if (line[at] == '"')
            {
                for (at++; line[at] != '"' || line[at + 1] == '"'; at++)
                {
                    at += line[at] == '"' ? 1 : 0;
                    cell += line[at];
                }

                at++;
            }
            else
            {
                for (; line[at] is not ',' and not '\r'; at++)
                {
                    cell += line[at];
                }
            }

            cells.Add(cell);
            if (line[at] != ',')
            {
                Assert.Equal("\r\n", line[at..]);
                return cells;
            }
        }
    }
}
