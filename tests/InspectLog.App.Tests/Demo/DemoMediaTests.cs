using InspectLog.Dictation.Hearing;
using InspectLog.Photos;
using InspectLog.Tests;

namespace InspectLog.App.Tests.Demo;

public sealed class DemoMediaTests
{
    [Fact]
    public void Every_file_of_the_story_is_there_and_none_is_left_over()
    {
        Assert.Equal(
            DemoFiles.Story.Recordings.Select(recording => recording.File).Order(StringComparer.Ordinal),
            FilesIn("recordings"));
        Assert.Equal(
            DemoFiles.Story.Vehicles.Select(vehicle => vehicle.Picture)
                .Concat(DemoFiles.Steps<App.Demo.PhotoStep>().Select(part => part.Step.File))
                .Order(StringComparer.Ordinal),
            FilesIn("photos"));
    }

    [Fact]
    public void Every_recording_is_one_the_program_takes()
    {
        foreach (var recording in DemoFiles.Story.Recordings)
        {
            var file = File.ReadAllBytes(DemoFiles.Recording(recording.File));
            Assert.True(WavFile.Read(file) is WavResult.Ok, recording.File);
        }
    }

    [Fact]
    public void Every_photo_is_one_the_program_takes_and_tells_nothing_else()
    {
        foreach (var path in Directory.GetFiles(Path.Combine(DemoFiles.Folder, "photos")))
        {
            var photo = Assert.IsType<PhotoResult.Ok>(PhotoIntake.Examine(File.ReadAllBytes(path)));
            Assert.Equal(PhotoFormat.Jpeg, photo.Facts.Format);
            Assert.Equal(4 * photo.Facts.Height, 3 * photo.Facts.Width);
            Assert.Null(photo.Facts.Taken);
        }
    }

    [Fact]
    public void Files_are_the_ones_whose_hashes_are_listed() =>
        ListedHashes.Hold(DemoFiles.Folder, "*.wav", "*.jpg");

    [Fact]
    public void Media_stay_small()
    {
        var bytes = new DirectoryInfo(DemoFiles.Folder).EnumerateFiles("*", SearchOption.AllDirectories).Sum(file => file.Length);

        Assert.InRange(bytes, 1, 4_000_000);
    }

    private static IEnumerable<string> FilesIn(string folder) =>
        Directory.GetFiles(Path.Combine(DemoFiles.Folder, folder)).Select(file => Path.GetFileName(file)!)
            .Order(StringComparer.Ordinal);
}
