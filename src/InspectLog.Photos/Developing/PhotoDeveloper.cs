using InspectLog.Photos.Alignment;
using InspectLog.Photos.Imaging;
using InspectLog.Photos.Judging;
using InspectLog.Photos.Likeness;

namespace InspectLog.Photos.Developing;

/// <summary>Develops photos in this process and on the calling thread: what a worker runs. Some bytes make the decoder take
/// very long or very much memory, so a program that others wait for uses workers.</summary>
public sealed class PhotoDeveloper : IPhotoDeveloper
{
    private const int JudgedEdge = 1280;

    /// <inheritdoc/>
    public Task<PhotoAnswer> DevelopAsync(
        PhotoWork work, ReadOnlyMemory<byte> original, PhotoFacts facts, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        return Task.FromResult(Develop(work, original));
    }

    /// <summary>Develops one photo. Pure.</summary>
    /// <param name="work">What is wanted.</param>
    /// <param name="original">The file. One that is no photo taken cannot be shown.</param>
    public static PhotoAnswer Develop(PhotoWork work, ReadOnlyMemory<byte> original)
    {
        try
        {
            using var photo = OpenedPhoto.Open(original);
            if (photo is null)
                return new PhotoAnswer.NotShown(PhotoFault.Damaged);
            return work switch
            {
                PhotoWork.Print => new PhotoAnswer.Print(photo.CopyWithin(PhotoIntake.PrintEdge).ToJpeg(PhotoIntake.PrintQuality)),
                PhotoWork.SmallPrint => new PhotoAnswer.Print(photo.CopyWithin(PhotoIntake.SmallPrintEdge).ToJpeg(PhotoIntake.SmallPrintQuality)),
                PhotoWork.Grey => Grey(photo),
                _ => Copies(photo),
            };
        }
        catch (InvalidDataException)
        {
            return new PhotoAnswer.NotShown(PhotoFault.Damaged);
        }
        catch (OutOfMemoryException)
        {
            return new PhotoAnswer.NotShown(PhotoFault.TooMuchMemory);
        }
    }

    private static PhotoAnswer.Grey Grey(OpenedPhoto photo)
    {
        using var small = photo.CopyWithin(ViewAlignment.Edge);
        return new(GreyPicture.Of(LumaPlane.Of(small.Pixels)));
    }

    /// <summary>The original is decoded once; the thumbnail and the figures are made of the display copy. A photo is judged
    /// as large as on a laptop's screen: what is blurred there is blurred.</summary>
    private static PhotoAnswer.Copies Copies(OpenedPhoto photo)
    {
        using var display = photo.CopyWithin(PhotoIntake.DisplayEdge);
        using var judged = display.Within(JudgedEdge);
        using var thumbnail = judged.Within(PhotoIntake.ThumbnailEdge);
        var luma = LumaPlane.Of(judged.Pixels);
        return new(
            display.ToJpeg(PhotoIntake.DisplayQuality),
            thumbnail.ToJpeg(PhotoIntake.DisplayQuality),
            new PhotoFigures(photo.Facts.Width, photo.Facts.Height)
            {
                Sharpness = PictureSharpness.Of(luma),
                Light = photo.Facts.Format == PhotoFormat.Jpeg ? PictureLight.Of(luma) : null,
                Fingerprint = PictureLook.Of(luma),
                Camera = photo.Facts.Camera,
            });
    }
}
