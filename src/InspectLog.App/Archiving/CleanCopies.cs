using InspectLog.Archives.Making;
using InspectLog.Photos;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Archiving;

/// <summary>Clean copies of photos for archives, made one at a time and in bounded time, as those that pages show.</summary>
public sealed class CleanCopies(IPhotoDeveloper developer) : ICleanCopies
{
    /// <inheritdoc/>
    public async Task<byte[]?> OfAsync(Stream original, CancellationToken stop)
    {
        if (original.Length > PhotoIntake.LargestFile)
        {
            return null;
        }

        var bytes = new byte[original.Length];
        await original.ReadExactlyAsync(bytes, stop);
        return PhotoIntake.Examine(bytes) is PhotoResult.Ok { Facts: var facts }
            && await developer.DevelopAsync(PhotoWork.Copies, bytes, facts, stop) is PhotoAnswer.Copies copies
                ? copies.Display
                : null;
    }
}
