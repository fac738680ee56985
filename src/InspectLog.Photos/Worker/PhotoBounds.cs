namespace InspectLog.Photos.Worker;

/// <summary>What a picture may cost before its worker is stopped. The time is that of the processor, so that an honest
/// picture is not given up because the computer has much else to do.</summary>
/// <param name="Starting">How long a worker may take to start.</param>
/// <param name="Processor">Processor time of any picture.</param>
/// <param name="ProcessorPerMegapixel">So much more for each megapixel. On an old laptop 12 megapixels take some two
/// seconds.</param>
/// <param name="Wait">So many times the processor time may pass by the clock.</param>
/// <param name="Memory">Memory of a worker with any picture, bytes.</param>
/// <param name="MemoryPerPixel">So much more for each pixel, bytes: three as decoded, up to six before where the JPEG comes
/// in several scans, and the copies.</param>
/// <param name="Turn">How long a picture waits for its turn.</param>
/// <param name="Idle">How long a worker without work is kept.</param>
public sealed record PhotoBounds(
    TimeSpan Starting,
    TimeSpan Processor,
    TimeSpan ProcessorPerMegapixel,
    double Wait,
    long Memory,
    int MemoryPerPixel,
    TimeSpan Turn,
    TimeSpan Idle)
{
    /// <summary>Pictures with more pixels take turns among themselves, so that memory stays within bounds on a computer
    /// of many cores: most cameras have fewer.</summary>
    public const long LargePixels = 16_000_000;

    private const long Pixels = 1_000_000;

    /// <summary>A minute to start; 3 s and 0.25 s for each megapixel; twenty times that by the clock, since pages and
    /// dictation go before it; 160 MB and 12 bytes
    /// for each pixel; half a minute for a turn; two minutes without work.</summary>
    public static PhotoBounds Usual { get; } = new(
        TimeSpan.FromMinutes(1),
        TimeSpan.FromSeconds(3),
        TimeSpan.FromSeconds(0.25),
        20,
        160_000_000,
        12,
        TimeSpan.FromSeconds(30),
        TimeSpan.FromMinutes(2));

    /// <summary>What one picture may cost.</summary>
    /// <param name="facts">The picture.</param>
    internal PictureBound Of(PhotoFacts facts)
    {
        var pixels = (long)facts.Width * facts.Height;
        var processor = Processor + (ProcessorPerMegapixel * ((double)pixels / Pixels));
        return new(processor, processor * Wait, Memory + (pixels * MemoryPerPixel));
    }
}

/// <summary>What one picture may cost.</summary>
/// <param name="Processor">Processor time.</param>
/// <param name="Clock">Time by the clock.</param>
/// <param name="Memory">Memory of the worker, bytes.</param>
internal readonly record struct PictureBound(TimeSpan Processor, TimeSpan Clock, long Memory);
