using InspectLog.Photos;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Media;

/// <summary>Small copies of photos for paper, so that a file with many of them can still be sent.</summary>
/// <param name="developer">Makes them.</param>
public sealed class SmallPrints(IPhotoDeveloper developer)
{
    /// <summary>The small copy of a photo's clean copy; that itself where no smaller one can be made now.</summary>
    /// <param name="copy">The clean copy, JPEG.</param>
    /// <param name="stop">Gives it up.</param>
    public async Task<byte[]> OfAsync(byte[] copy, CancellationToken stop) =>
        PhotoIntake.Examine(copy) is PhotoResult.Ok { Facts: var facts }
        && Math.Max(facts.Width, facts.Height) > PhotoIntake.SmallPrintEdge
        && await developer.DevelopAsync(PhotoWork.SmallPrint, copy, facts, stop) is PhotoAnswer.Print(var small)
        && small.Length < copy.Length
            ? small
            : copy;
}
