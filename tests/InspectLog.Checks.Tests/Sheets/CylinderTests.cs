namespace InspectLog.Checks.Tests.Sheets;

public class CylinderTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless)!;

    [Fact]
    public void Built_in_sheet_says_for_which_engines_it_is() =>
        Assert.Equal([3, 4, 5, 6, 8, 12], Sheet.CylinderCounts);

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(12)]
    public void Sheet_for_an_engine_has_its_number_of_cylinders(int cylinders)
    {
        var sheet = Sheet.For(cylinders);

        Assert.Equal(cylinders, sheet.Cylinders);
        Assert.Equal((Sheet.Sha256, Sheet.Checks.Count), (sheet.Sha256, sheet.Checks.Count));
        Assert.True(sheet.Fits(6)); // what it is for stays the same
    }

    [Fact]
    public void Engine_the_sheet_is_not_for_is_refused_with_those_it_is_for()
    {
        Assert.False(Sheet.Fits(7));

        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Sheet.For(7));

        Assert.Contains("is for 3, 4, 5, 6, 8 or 12 cylinders", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("6", 6, new[] { 6 })] // one number alone, as sheets had it before
    [InlineData("4", 4, new[] { 4 })]
    [InlineData("[4, 6, 8]", 6, new[] { 4, 6, 8 })]
    [InlineData("[2, 3]", 2, new[] { 2, 3 })]
    public void File_gives_one_number_of_cylinders_or_several(string cylinders, int usual, int[] all)
    {
        var changed = SheetFiles.Changed("/cylinders", cylinders);

        var sheet = CheckSheetFile.Parse(SheetFiles.Bytes(changed));

        Assert.True(SheetFiles.SchemaAccepts(changed));
        Assert.Equal(usual, sheet.Cylinders);
        Assert.Equal(all, sheet.CylinderCounts);
    }

    [Theory]
    [InlineData(new int[0], "")]
    [InlineData(new[] { 6 }, "6")]
    [InlineData(new[] { 4, 6 }, "4 or 6")]
    [InlineData(new[] { 4, 6, 8 }, "4, 6 or 8")]
    public void Numbers_are_listed_as_people_say_them(int[] numbers, string said) =>
        Assert.Equal(said, ListedNumbers.OneOf(numbers));
}
