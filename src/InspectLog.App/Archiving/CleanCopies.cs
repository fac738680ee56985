using InspectLog.Archives.Making;
using InspectLog.Photos;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Archiving;

/// <summary>Clean copies of photos for archives, made one at a time and in bounded time, as those that pages show.</summary>
public sealed class CleanCopies(IPhotoDeveloper developer) : ICleanCopies
{
    /// <inheritdoc/>
    public async Task<byte[]?> OfAsync(string path, CancellationToken stop)
    {
        if (new FileInfo(path).Length > PhotoIntake.LargestFile)
        {
            return null;
        }

        var original = await File.ReadAllBytesAsync(path, stop);
        return PhotoIntake.Examine(original) is PhotoResult.Ok { Facts: var facts }
            && await developer.DevelopAsync(PhotoWork.Copies, original, facts, stop) is PhotoAnswer.Copies copies
                ? copies.Display
                : null;
    }
}
