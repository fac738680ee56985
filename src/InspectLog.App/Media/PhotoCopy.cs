using InspectLog.Photos.Developing;

namespace InspectLog.App.Media;

/// <summary>The copy of a photo that is shown, or why there is none.</summary>
public abstract record PhotoCopy
{
    private PhotoCopy()
    {
    }

    /// <summary>The copy, made of this very original.</summary>
    public sealed record Ready(byte[] Jpeg) : PhotoCopy;

    /// <summary>The photo is there and cannot be shown.</summary>
    public sealed record CannotBeShown(PhotoFault Fault) : PhotoCopy;

    /// <summary>Other photos are being made ready and take long; asked again later, it may be shown.</summary>
    public sealed record Later : PhotoCopy;

    /// <summary>There is no such photo.</summary>
    public sealed record NoSuchPhoto : PhotoCopy;
}
