using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

public sealed class SheetStoreTests : IDisposable
{
    // FIPS 180-2, appendix B.1: SHA-256 of "abc".
    private const string Sha256OfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private readonly TempFolder _folder = new();
    private readonly Garage _garage;

    public SheetStoreTests() => _garage = Garage.Open(_folder.Path, Some.Clock());

    private SheetStore Sheets => _garage.Sheets;

    private string File => _folder.At("sheets", $"{Sha256OfAbc}.json");

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Kept_sheet_is_named_by_its_hash_and_read_back_by_it()
    {
        Assert.Equal(Sha256OfAbc, Sheets.Keep("abc"u8));

        Assert.Equal("abc", System.IO.File.ReadAllText(File));
        Assert.Equal("abc"u8.ToArray(), Sheets.Read(Sha256OfAbc));
    }

    [Fact]
    public void Same_sheet_is_kept_once()
    {
        Sheets.Keep("abc"u8);
        Sheets.Keep("abc"u8);

        Assert.Equal([File], Directory.GetFiles(_folder.At("sheets"), "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void File_whose_bytes_do_not_match_its_name_is_not_used_and_is_mended_by_keeping_the_sheet_again()
    {
        Sheets.Keep("abc"u8);
        System.IO.File.WriteAllText(File, "abd");
        Assert.Null(Sheets.Read(Sha256OfAbc));

        Sheets.Keep("abc"u8);

        Assert.Equal("abc"u8.ToArray(), Sheets.Read(Sha256OfAbc));
    }

    [Theory]
    [InlineData("")]
    [InlineData("ba7816bf")]
    [InlineData("../../../etc/passwd")]
    [InlineData("BA7816BF8F01CFEA414140DE5DAE2223B00361A396177A9CB410FF61F20015AD")]
    [InlineData("00000000000000000000000000000000000000000000000000000000000000ff")]
    public void Name_of_no_kept_sheet_finds_none(string name)
    {
        Sheets.Keep("abc"u8);

        Assert.Null(Sheets.Read(name));
    }

    [Fact]
    public void What_an_interrupted_keeping_left_behind_is_gone_after_the_next_start()
    {
        _garage.Dispose();
        Directory.CreateDirectory(_folder.At("sheets", "incoming"));
        System.IO.File.WriteAllText(_folder.At("sheets", "incoming", "half"), "ab");

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.False(Directory.Exists(_folder.At("sheets", "incoming")));
    }
}
