using System.Buffers.Binary;
using System.Text.Json;
using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Worker;

/// <summary>What a frame between the program and a worker says.</summary>
internal enum PhotoMessage : byte
{
    /// <summary>From the worker: it is ready. The first frame it sends.</summary>
    Ready = 1,

    /// <summary>To the worker: make the copies and figures of the photo that follows.</summary>
    MakeCopies = 2,

    /// <summary>To the worker: make the copy for paper of the photo that follows.</summary>
    MakePrint = 3,

    /// <summary>From the worker: the display copy; the thumbnail and the figures come next.</summary>
    Display = 4,

    /// <summary>From the worker: the thumbnail.</summary>
    Thumbnail = 5,

    /// <summary>From the worker: the figures (JSON). The last of three frames.</summary>
    Figures = 6,

    /// <summary>From the worker: the copy for paper.</summary>
    Print = 7,

    /// <summary>From the worker: the photo cannot be shown; one byte says why.</summary>
    NotShown = 8,

    /// <summary>To the worker: make the picture in shades of grey of the photo that follows.</summary>
    MakeGrey = 9,

    /// <summary>From the worker: width and height (16 bit, little-endian each) and the shades, row by row.</summary>
    Grey = 10,

    /// <summary>To the worker: make the small copy for paper of the photo that follows.</summary>
    MakeSmallPrint = 11,
}

/// <summary>One message: length (32 bit, little-endian, of kind and body), kind, body.</summary>
internal readonly record struct PhotoFrame(PhotoMessage Message, ReadOnlyMemory<byte> Body)
{
    /// <summary>The largest photo taken; the copies are smaller.</summary>
    private const int LongestBody = PhotoIntake.LargestFile;

    private const int Header = 5;

    public static PhotoFrame Question(PhotoWork work, ReadOnlyMemory<byte> original) =>
        new(
            work switch
            {
                PhotoWork.Print => PhotoMessage.MakePrint,
                PhotoWork.Grey => PhotoMessage.MakeGrey,
                PhotoWork.SmallPrint => PhotoMessage.MakeSmallPrint,
                _ => PhotoMessage.MakeCopies,
            },
            original);

    /// <exception cref="InvalidDataException">It is no question.</exception>
    public PhotoWork Work => Message switch
    {
        PhotoMessage.MakeCopies => PhotoWork.Copies,
        PhotoMessage.MakePrint => PhotoWork.Print,
        PhotoMessage.MakeGrey => PhotoWork.Grey,
        PhotoMessage.MakeSmallPrint => PhotoWork.SmallPrint,
        _ => throw Foreign(),
    };

    public static InvalidDataException Foreign() => new("it does not speak the worker's protocol");

    /// <summary>The frames that carry an answer.</summary>
    public static IReadOnlyList<PhotoFrame> Of(PhotoAnswer answer) => answer switch
    {
        PhotoAnswer.Copies copies =>
        [
            new(PhotoMessage.Display, copies.Display),
            new(PhotoMessage.Thumbnail, copies.Thumbnail),
            new(PhotoMessage.Figures, JsonSerializer.SerializeToUtf8Bytes(copies.Figures)),
        ],
        PhotoAnswer.Print print => [new(PhotoMessage.Print, print.Jpeg)],
        PhotoAnswer.Grey(var picture) => [new(PhotoMessage.Grey, GreyFrame.Body(picture))],
        PhotoAnswer.NotShown(var fault) => [new(PhotoMessage.NotShown, new[] { (byte)fault })],
        _ => throw new ArgumentException("A worker always knows of the photo.", nameof(answer)),
    };

    /// <summary>Reads an answer.</summary>
    /// <exception cref="InvalidDataException">The stream does not hold one.</exception>
    /// <exception cref="EndOfStreamException">The stream ends.</exception>
    public static async Task<PhotoAnswer> ReadAnswerAsync(Stream stream)
    {
        var first = await NextAsync(stream);
        switch (first.Message)
        {
            case PhotoMessage.Print:
                return new PhotoAnswer.Print(first.Body.ToArray());
            case PhotoMessage.Grey:
                return new PhotoAnswer.Grey(GreyFrame.Read(first.Body.Span) ?? throw Foreign());
            case PhotoMessage.NotShown when first.Body.Length == 1 && Enum.IsDefined((PhotoFault)first.Body.Span[0]):
                return new PhotoAnswer.NotShown((PhotoFault)first.Body.Span[0]);
            case PhotoMessage.Display when await NextAsync(stream) is { Message: PhotoMessage.Thumbnail } thumbnail
                && await NextAsync(stream) is { Message: PhotoMessage.Figures } figures:
                return new PhotoAnswer.Copies(first.Body.ToArray(), thumbnail.Body.ToArray(), FiguresOf(figures));
            default:
                throw Foreign();
        }
    }

    /// <summary>The next frame; null at the end of the stream.</summary>
    /// <exception cref="InvalidDataException">The stream does not hold frames.</exception>
    public static async Task<PhotoFrame?> ReadAsync(Stream stream)
    {
        var header = new byte[Header];
        if (await stream.ReadAtLeastAsync(header, Header, throwOnEndOfStream: false) < Header)
            return null;

        var length = BinaryPrimitives.ReadInt32LittleEndian(header) - 1;
        if (length is < 0 or > LongestBody)
            throw Foreign();

        var body = new byte[length];
        var isWhole = await stream.ReadAtLeastAsync(body, length, throwOnEndOfStream: false) == length;
        return isWhole ? new PhotoFrame((PhotoMessage)header[^1], body) : null;
    }

    public async Task WriteAsync(Stream stream)
    {
        var header = new byte[Header];
        BinaryPrimitives.WriteInt32LittleEndian(header, Body.Length + 1);
        header[^1] = (byte)Message;
        await stream.WriteAsync(header);
        await stream.WriteAsync(Body);
        await stream.FlushAsync();
    }

    private static async Task<PhotoFrame> NextAsync(Stream stream) =>
        await ReadAsync(stream) ?? throw new EndOfStreamException("it ended");

    private static PhotoFigures FiguresOf(PhotoFrame frame)
    {
        try
        {
            return JsonSerializer.Deserialize<PhotoFigures>(frame.Body.Span) ?? throw Foreign();
        }
        catch (JsonException)
        {
            throw Foreign();
        }
    }
}
