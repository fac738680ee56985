namespace InspectLog.Photos.Likeness;

/// <summary>What a photo looks like, small enough to be kept of every photo. Whether two photos are the same picture is told
/// from it alone (<see cref="SamePicture"/>).</summary>
/// <param name="Coarse">64 bits that pictures that look alike have nearly in common: signs of the lowest terms of the cosine
/// transform of its brightness.</param>
/// <param name="Look">Its brightness upright, <see cref="Edge"/> rows of as many values, whatever its proportions.</param>
public sealed record PhotoFingerprint(ulong Coarse, byte[] Look)
{
    /// <summary>Rows and columns of <see cref="Look"/>.</summary>
    public const int Edge = 128;

    /// <summary>Whether it is one: a slip that was written over may hold any bytes.</summary>
    internal bool IsWhole => Look is { Length: Edge * Edge };
}
