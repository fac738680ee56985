using System.Text;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

public sealed class MediaStoreTests : IDisposable
{
    // FIPS 180-2, appendix B.1: SHA-256 of "abc".
    private const string Sha256OfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private readonly TempFolder _folder = new();
    private readonly Garage _garage;

    public MediaStoreTests() => _garage = Garage.Open(_folder.Path, Some.Clock());

    private MediaStore Media => (MediaStore)_garage.Media;

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Kept_file_is_named_by_its_hash_and_holds_its_bytes()
    {
        var file = Media.Keep("abc"u8, "audio/wav");

        Assert.Equal((Sha256OfAbc, 3L, "audio/wav"), (file.Sha256, file.Bytes, file.Type));
        Assert.Equal(_folder.At("media", "ba", Sha256OfAbc), Media.PathOf(file.Sha256));
        Assert.Equal("abc", File.ReadAllText(Media.PathOf(file.Sha256)!));
        Assert.Equal(MediaCondition.Whole, Media.Check(file));
    }

    [Fact]
    public void Same_bytes_are_kept_once()
    {
        Media.Keep("abc"u8, "audio/wav");
        Media.Keep("abc"u8, "audio/wav");

        Assert.Single(Directory.GetFiles(_folder.At("media"), "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Damaged_file_is_noticed_and_made_whole_by_keeping_its_bytes_again()
    {
        var file = Media.Keep("abc"u8, "audio/wav");
        File.WriteAllText(Media.PathOf(file.Sha256)!, "abd");
        Assert.Equal(MediaCondition.Damaged, Media.Check(file));

        Media.Keep("abc"u8, "audio/wav");

        Assert.Equal(MediaCondition.Whole, Media.Check(file));
    }

    [Theory]
    [InlineData("")]
    [InlineData("ba7816bf")]
    [InlineData("../../etc/passwd")]
    [InlineData("BA7816BF8F01CFEA414140DE5DAE2223B00361A396177A9CB410FF61F20015AD")]
    [InlineData("zz7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("00000000000000000000000000000000000000000000000000000000000000ff")]
    public async Task Name_of_no_kept_file_is_never_there(string name)
    {
        Media.Keep("abc"u8, "audio/wav");

        Assert.Null(Media.PathOf(name));
        Assert.False(Media.Has(name));
        Assert.Null(await Media.OpenAsync(name, TestContext.Current.CancellationToken));
        Assert.Equal(MediaCondition.Missing, Media.Check(new(name, 3, "audio/wav")));
    }

    [Fact]
    public async Task Kept_file_is_read_as_a_stream_that_knows_its_length_and_can_seek()
    {
        var stop = TestContext.Current.CancellationToken;
        var file = Media.Keep("abc"u8, "audio/wav");

        await using var stream = await Media.OpenAsync(file.Sha256, stop);

        Assert.True(Media.Has(file.Sha256));
        Assert.Equal((3, true), (stream!.Length, stream.CanSeek));
        Assert.Equal("abc"u8.ToArray(), await StreamedBytes.ReadAsync(Media.OpenAsync(file.Sha256, stop), stop));
        Assert.Null(await StreamedBytes.ReadAsync(Media.OpenAsync("none", stop), stop));
    }

    [Fact]
    public void What_an_interrupted_keeping_left_behind_is_gone_after_the_next_start()
    {
        _garage.Dispose();
        Directory.CreateDirectory(_folder.At("media", "incoming"));
        File.WriteAllText(_folder.At("media", "incoming", "half"), "ha");

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.False(Directory.Exists(_folder.At("media", "incoming")));
    }

    [Fact]
    public async Task Many_threads_may_keep_the_same_bytes_at_once()
    {
        var bytes = Encoding.UTF8.GetBytes(new string('x', 100_000));

        await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(
            () => Media.Keep(bytes, "audio/wav"), TestContext.Current.CancellationToken)));

        Assert.Equal(MediaCondition.Whole, Media.Check(Media.Keep(bytes, "audio/wav")));
        Assert.Single(Directory.GetFiles(_folder.At("media"), "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Empty_file_can_be_kept()
    {
        var file = Media.Keep([], "audio/wav");

        Assert.Equal(MediaCondition.Whole, Media.Check(file));
    }
}
