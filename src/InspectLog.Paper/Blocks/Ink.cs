namespace InspectLog.Paper.Blocks;

/// <summary>A colour on white paper.</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
public readonly record struct Ink(byte Red, byte Green, byte Blue)
{
    /// <summary>Black.</summary>
    public static Ink Black { get; } = new(0, 0, 0);

    /// <summary>A colour as style sheets write it.</summary>
    /// <param name="rgb">0xRRGGBB.</param>
    public static Ink Of(int rgb) => new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);
}
