using InspectLog.Photos.Alignment;

namespace InspectLog.Photos.Developing;

/// <summary>What developing a photo gave.</summary>
public abstract record PhotoAnswer
{
    private PhotoAnswer()
    {
    }

    /// <summary>The copies that pages show, upright and without metadata, and what is told of the photo.</summary>
    /// <param name="Display">JPEG, fits <see cref="PhotoIntake.DisplayEdge"/>.</param>
    /// <param name="Thumbnail">JPEG, fits <see cref="PhotoIntake.ThumbnailEdge"/>.</param>
    /// <param name="Figures">What is told of the photo.</param>
    public sealed record Copies(byte[] Display, byte[] Thumbnail, PhotoFigures Figures) : PhotoAnswer;

    /// <summary>A copy for paper, upright and without metadata.</summary>
    /// <param name="Jpeg">JPEG, fits <see cref="PhotoIntake.PrintEdge"/>, or the smaller of the two its own
    /// <see cref="PhotoIntake.SmallPrintEdge"/>.</param>
    public sealed record Print(byte[] Jpeg) : PhotoAnswer;

    /// <summary>The photo in shades of grey, upright.</summary>
    /// <param name="Picture">Fits <see cref="ViewAlignment.Edge"/>.</param>
    public sealed record Grey(GreyPicture Picture) : PhotoAnswer;

    /// <summary>The photo cannot be shown.</summary>
    /// <param name="Fault">Why.</param>
    public sealed record NotShown(PhotoFault Fault) : PhotoAnswer;

    /// <summary>Too many photos wait, or nothing can be developed on this computer at present. Nothing is known of the
    /// photo.</summary>
    public sealed record NotNow : PhotoAnswer;
}

/// <summary>Why a photo cannot be shown.</summary>
public enum PhotoFault
{
    /// <summary>Its pixels are damaged.</summary>
    Damaged = 1,

    /// <summary>It takes too long.</summary>
    TooSlow = 2,

    /// <summary>It takes too much memory.</summary>
    TooMuchMemory = 3,

    /// <summary>It ends every process that decodes it.</summary>
    EndsDecoder = 4,
}
