using InspectLog.Paper;
using InspectLog.Paper.Blocks;
using UglyToad.PdfPig;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>The room Paper, with documents that are about nothing.</summary>
public sealed class PaperWriterTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Letters_of_readings_and_of_other_scripts_are_shown_and_told()
    {
        const string Text = "Ω µ ° ± ≤ ≥ – “quoted” × ÷ √ → Größe Żółć Ελλάδα Москва Հայ";

        var file = Written(Paragraph(Text));

        Assert.Contains(Poppler.Tight(Text), Poppler.Tight(Poppler.Text(file)), StringComparison.Ordinal);
        Assert.Contains(Poppler.Tight(Text), Told(file), StringComparison.Ordinal);
        Assert.All(Poppler.Fonts(file), font => Assert.True(font.IsWhole, font.Name));
    }

    [Theory]
    [InlineData("漢字")] // letters that the fonts have not
    [InlineData("\U00020000 \U0001FAE0")]
    [InlineData("half a pair: \ud83d")]
    public void Letters_that_the_fonts_have_not_are_shown_as_a_sign_for_that(string text)
    {
        var file = Written(Paragraph($"before {text} after"));

        var told = Told(file);
        Assert.StartsWith("before", told, StringComparison.Ordinal);
        Assert.EndsWith("after", told, StringComparison.Ordinal);
        Assert.Contains("\ufffd", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_are_left_out_and_what_stands_around_them_stays()
    {
        var file = Written(Paragraph("a\0b\u0007c\u200bd\u202ee\u2028f\tg"));

        Assert.Equal("abcdefg", Told(file));
    }

    [Fact]
    public void Ten_thousand_letters_without_a_space_are_broken_into_lines_within_the_margins()
    {
        var word = string.Concat(Enumerable.Range(0, 10_000).Select(at => (char)('a' + at % 26)));

        var file = Written(
            new Block.Heading(1, [new Inline.Text(word[..500])]),
            Paragraph(word),
            new Block.Table([1, 1], [new(false, [new([Paragraph(word)], true), new([Paragraph("beside")], false)])]),
            new Block.Beside(2, [[Paragraph(word)], [Paragraph("beside")]]) { IsList = true });

        using var pdf = PdfDocument.Open(file);
        Assert.All(
            pdf.GetPages().SelectMany(page => page.Letters),
            letter => Assert.True(
                letter.BoundingBox.Left >= 42 && letter.BoundingBox.Right <= 595.3 - 42 && letter.BoundingBox.Bottom >= 25,
                $"{letter.Value} at {letter.BoundingBox}"));
        var told = Told(file);
        Assert.Equal(word[..500] + word + word + "beside" + word + "beside", told);
    }

    [Fact]
    public void Endless_words_at_the_head_of_a_page_are_cut_before_they_meet()
    {
        var endless = string.Concat(Enumerable.Repeat("garage", 2000));
        var file = Path.Combine(_folder.FullName, "head.pdf");
        File.WriteAllBytes(file, PaperWriter.Write(Document([Paragraph("words")]) with { HeadLeft = endless, HeadRight = endless, FootLeft = endless }, stop: TestContext.Current.CancellationToken));

        using var pdf = PdfDocument.Open(file);
        var letters = pdf.GetPage(1).Letters;
        Assert.All(letters, letter => Assert.InRange(letter.BoundingBox.Right, 42, 595.3 - 42));
        Assert.Equal(3, letters.Count(letter => letter.Value == "…"));
    }

    [Fact]
    public void Words_read_from_right_to_left_are_told_in_their_order_and_stand_turned()
    {
        var file = Written(Paragraph("garage אבג דה end"));

        using var pdf = PdfDocument.Open(file);
        var letters = pdf.GetPage(1).Letters;
        double X(string letter) => letters.First(one => one.Value == letter).BoundingBox.Left;
        Assert.True(X("א") > X("ב") && X("ב") > X("ג") && X("ג") > X("ד"));
        Assert.True(X("ה") > X("r") && X("א") < letters[^1].BoundingBox.Left);
        Assert.EndsWith("garageאבגדהend", Poppler.Tight(string.Concat(letters.Select(letter => letter.Value))), StringComparison.Ordinal);
    }

    [Fact]
    public void Heading_stands_on_the_page_of_what_follows_it()
    {
        // However much stands above: at some of these the heading alone would still have room on the page.
        foreach (var above in Enumerable.Range(36, 25))
        {
            var file = Written(
                [.. Enumerable.Range(0, above).Select(line => Paragraph($"line {line}")), new Block.Heading(2, [new Inline.Text("Heading")]), Paragraph("follows")]);

            using var pdf = PdfDocument.Open(file);
            Assert.Single(pdf.GetPages(), page => page.Text.Contains("Heading", StringComparison.Ordinal) && page.Text.Contains("follows", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Head_of_a_table_is_shown_on_each_page_and_told_once()
    {
        Row RowOf(bool isHead, string first, string second) => new(isHead, [new([Paragraph(first)], true), new([Paragraph(second)], isHead)]);
        var file = Written(new Block.Table([1, 1], [RowOf(true, "Columnone", "Columntwo"), .. Enumerable.Range(0, 120).Select(row => RowOf(false, $"row{row}", $"value{row}"))]) { HasLines = true });

        using var pdf = PdfDocument.Open(file);
        Assert.True(pdf.NumberOfPages > 2);
        Assert.All(pdf.GetPages(), page => Assert.Contains("Columnone", page.Text, StringComparison.Ordinal));
        Assert.Single(Poppler.Told(file), one => one.Text == "Columnone");
        var table = Assert.Single(TaggedTree.Of(pdf).All, one => one.Type == "Table");
        Assert.Equal(121, table.Children.Count(row => row.Type == "TR"));
        Assert.Equal(["Column", "Column"], table.Children[0].Children.Select(cell => cell.Scope));
        Assert.Equal(["Row", null], table.Children[^1].Children.Select(cell => cell.Scope));
    }

    [Fact]
    public void File_says_who_made_it_when_and_nothing_of_the_computer()
    {
        var file = Written(Paragraph("words"));

        var info = Poppler.Info(file);
        Assert.Equal(("A title", "Some program 1.2", "yes", "1"), (info["Title"], info["Creator"], info["Tagged"], info["Pages"]));
        Assert.Contains("Nov 25", info["CreationDate"], StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(file);
        Assert.Equal("en-GB", ((UglyToad.PdfPig.Tokens.StringToken)TaggedTree.Catalog(pdf).Data["Lang"]).Data);
        var bytes = System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file));
        Assert.DoesNotContain(Environment.MachineName, bytes, StringComparison.Ordinal);
        Assert.DoesNotContain(_folder.FullName, bytes, StringComparison.Ordinal);
        Assert.Contains("/DisplayDocTitle true", bytes, StringComparison.Ordinal);
    }

    [Fact]
    public void Same_document_makes_the_same_bytes_and_another_one_others()
    {
        Block[] blocks = [new Block.Heading(1, [new Inline.Text("Same")]), Paragraph("words"), Paragraph("bold") with { IsBold = true }];

        var (first, second, other) = (File.ReadAllBytes(Written(blocks)), File.ReadAllBytes(Written(blocks)), File.ReadAllBytes(Written([.. blocks, Paragraph("more")])));

        Assert.Equal(first, second);
        Assert.NotEqual(Identifier(first), Identifier(other));
    }

    [Fact]
    public void Hundred_pictures_and_hundreds_of_readings_make_a_file_little_larger_than_the_pictures()
    {
        var pictures = Enumerable.Range(0, 100).Select(Jpeg).ToList();
        IReadOnlyList<Block> blocks =
        [
            .. Enumerable.Range(0, 600).SelectMany<int, Block>(at => [Paragraph($"Reading {at}: 5.510 kΩ ± 0.061 kΩ: pass."), new Block.Drawn(Strip(at), null, 340)]),
            new Block.Beside(2, [.. pictures.Select<byte[], IReadOnlyList<Block>>((jpeg, at) => [new Block.Picture($"Photo {at}", jpeg, 200), Paragraph($"Caption {at}")])]) { IsList = true },
        ];

        var before = GC.GetAllocatedBytesForCurrentThread();
        var bytes = PaperWriter.Write(Document(blocks), stop: TestContext.Current.CancellationToken);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        var sum = pictures.Sum(jpeg => (long)jpeg.Length);
        Assert.True(sum > 8_000_000, $"{sum} bytes of pictures say nothing");
        Assert.InRange(bytes.Length, sum, sum + 1_000_000);
        Assert.True(allocated < 8 * bytes.Length + 200_000_000, $"{allocated} bytes for a file of {bytes.Length}");
    }

    [Fact]
    public void Picture_that_is_none_leaves_its_words()
    {
        var file = Written(new Block.Picture("Photo: cap", [1, 2, 3], 200), new Block.Picture("Photo: rotor", null, 200));

        Assert.Equal("NopicturehereNopicturehere", Told(file));
    }

    [Fact]
    public void It_is_given_up_when_it_is_told_to_stop()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() => PaperWriter.Write(Document([Paragraph("words")]), stop: stop.Token));
    }

    private static Block.Paragraph Paragraph(string text) => new([new Inline.Text(text)]);

    private static PaperDocument Document(IReadOnlyList<Block> blocks) => new("A title", "en-GB", blocks)
    {
        Program = "Some program 1.2",
        Made = Noon,
        NoPicture = "No picture here",
    };

    /// <summary>A real photo of the demo; what follows its end differs from one to the next, as other photos would.</summary>
    private static byte[] Jpeg(int number) => [.. File.ReadAllBytes(Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "demo", "photos"), "*.jpg")[0]), .. BitConverter.GetBytes(number)];

    private static VectorDrawing Strip(int at) => new(500, 86, [new Shape.Outline(PathReader.Read($"M6 60H494M{100 + at % 300} 20V68")) { Stroke = Ink.Black }]);

    private static string Identifier(byte[] file) => System.Text.Encoding.Latin1.GetString(file).Split("/ID[<")[1][..32];

    private static string Told(string file) => Poppler.Tight(string.Concat(Poppler.Told(file).Select(one => one.Text).Where(text => text != "•")));

    private string Written(params IReadOnlyList<Block> blocks)
    {
        var file = Path.Combine(_folder.FullName, $"{Guid.NewGuid():N}.pdf");
        File.WriteAllBytes(file, PaperWriter.Write(Document(blocks)));
        return file;
    }
}
