using System.Security.Cryptography;
using System.Text;
using InspectLog.App.Media;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Media;

/// <summary>What is kept of photos that nobody finishes sending is bounded.</summary>
public sealed class PhotoPiecesTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-pieces-");
    private readonly FakeTimeProvider _clock = new(TimeProvider.System.GetUtcNow());

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Sixty_unfinished_photos_are_kept_and_the_oldest_makes_room_for_the_next()
    {
        var pieces = Pieces();
        for (var photo = 0; photo < 60; photo++)
        {
            Assert.Equal(3, pieces.Add(Name(photo), 0, [1, 2, 3]));
            File.SetLastWriteTimeUtc(FileOf(photo), _clock.GetUtcNow().UtcDateTime.AddMinutes(photo - 100));
        }

        Assert.Equal(60, Kept());
        pieces.Add(Name(60), 0, [1, 2, 3]);

        Assert.Equal(60, Kept());
        Assert.Equal(0, pieces.Add(Name(0), 0, []));
        Assert.Equal(3, pieces.Add(Name(1), 0, []));
    }

    [Theory]
    [InlineData(6, 3)]
    [InlineData(8, 0)]
    public void Unfinished_photo_is_kept_for_a_week(int days, long there)
    {
        var pieces = Pieces();
        pieces.Add(Name(0), 0, [1, 2, 3]);
        _clock.Advance(TimeSpan.FromDays(days));

        pieces.Add(Name(1), 0, [1]);

        Assert.Equal(there, pieces.Add(Name(0), 0, []));
    }

    private PhotoPieces Pieces() => new(_folder.FullName, _clock);

    private int Kept() => Directory.GetFiles(Path.Combine(_folder.FullName, "pieces")).Length;

    private string FileOf(int photo) => Path.Combine(_folder.FullName, "pieces", Name(photo));

    private static string Name(int photo) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"photo {photo}")));
}
