using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;

namespace InspectLog.Dictation.Hearing.Worker;

/// <summary>What a frame between client and worker says.</summary>
internal enum WorkerMessage : byte
{
    /// <summary>To the worker: transcribe the samples that follow (32-bit floats, little-endian).</summary>
    Transcribe = 1,

    /// <summary>To the worker: give the running transcription up.</summary>
    Cancel = 2,

    /// <summary>From the worker: whether it can transcribe (JSON). The first frame it sends, when the model is loaded.</summary>
    Readiness = 3,

    /// <summary>From the worker: the share done, a 64-bit float.</summary>
    Progress = 4,

    /// <summary>From the worker: the transcript (JSON).</summary>
    Transcript = 5,

    /// <summary>From the worker: speech is unavailable (text).</summary>
    Unavailable = 6,

    /// <summary>From the worker: this recording failed (text).</summary>
    Failed = 7,

    /// <summary>From the worker: given up as asked.</summary>
    Cancelled = 8,

    /// <summary>To the worker: examples for the recording that comes next (text).</summary>
    Examples = 9,
}

/// <summary>One message between client and worker: length (32 bit, little-endian, of kind and body), kind, body.</summary>
internal readonly record struct WorkerFrame(WorkerMessage Message, byte[] Body)
{
    /// <summary>The longest recording as floats, and the kind.</summary>
    public const int LongestBody = 10 * 60 * PcmAudio.SampleRate * sizeof(float);

    private const int Header = 5;

    public string Text => Encoding.UTF8.GetString(Body);

    public double Share => Body.Length == sizeof(double) ? BinaryPrimitives.ReadDoubleLittleEndian(Body) : 0;

    public static WorkerFrame Of(WorkerMessage message) => new(message, []);

    public static WorkerFrame OfText(WorkerMessage message, string text) => new(message, Encoding.UTF8.GetBytes(text));

    public static WorkerFrame OfJson<T>(WorkerMessage message, T value) => new(message, JsonSerializer.SerializeToUtf8Bytes(value));

    public static WorkerFrame OfShare(double share)
    {
        var body = new byte[sizeof(double)];
        BinaryPrimitives.WriteDoubleLittleEndian(body, share);
        return new(WorkerMessage.Progress, body);
    }

    // Both processes run on one machine, so the samples keep its byte order.
    public static WorkerFrame OfAudio(PcmAudio audio) =>
        new(WorkerMessage.Transcribe, MemoryMarshal.AsBytes(audio.Samples.Span).ToArray());

    public PcmAudio ToAudio() => new(MemoryMarshal.Cast<byte, float>(Body).ToArray());

    /// <exception cref="InvalidDataException">The body is not what it should be.</exception>
    public T FromJson<T>()
    {
        try
        {
            return JsonSerializer.Deserialize<T>(Body) ?? throw new InvalidDataException("it sent nothing");
        }
        catch (JsonException e)
        {
            throw new InvalidDataException("it sent something unreadable", e);
        }
    }

    /// <summary>The next frame; null at the end of the stream.</summary>
    /// <exception cref="InvalidDataException">The stream does not hold frames.</exception>
    public static async Task<WorkerFrame?> ReadAsync(Stream stream, CancellationToken cancellationToken)
    {
        var header = new byte[Header];
        if (await stream.ReadAtLeastAsync(header, Header, throwOnEndOfStream: false, cancellationToken) < Header)
            return null;

        var length = BinaryPrimitives.ReadInt32LittleEndian(header) - 1;
        if (length is < 0 or > LongestBody)
            throw new InvalidDataException("it does not speak the worker's protocol");

        var body = new byte[length];
        var complete = await stream.ReadAtLeastAsync(body, length, throwOnEndOfStream: false, cancellationToken) == length;
        return complete ? new WorkerFrame((WorkerMessage)header[^1], body) : null;
    }

    public async Task WriteAsync(Stream stream, CancellationToken cancellationToken)
    {
        var header = new byte[Header];
        BinaryPrimitives.WriteInt32LittleEndian(header, Body.Length + 1);
        header[^1] = (byte)Message;
        await stream.WriteAsync(header, cancellationToken);
        await stream.WriteAsync(Body, cancellationToken);
        await stream.FlushAsync(cancellationToken);
    }
}
