using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Tests.Support;

/// <summary>A journal that is kept in memory.</summary>
internal sealed class HeldLog(byte[] bytes) : IEntryLog
{
    /// <summary>What is kept; may be changed behind its back.</summary>
    public byte[] Bytes { get; private set; } = bytes;

    /// <summary>How often something was read from it.</summary>
    public int Reads { get; private set; }

    public string Place => "held.jsonl";

    public WriteLatch Latch { get; } = new WriteLatches().Adding;

    public Stream OpenAfresh() => new MemoryStream(Bytes, writable: false);

    public void Read(Span<byte> bytes, long at)
    {
        Reads++;
        Bytes.AsSpan((int)at, bytes.Length).CopyTo(bytes);
    }

    public void Append(ReadOnlyMemory<byte> record) => Bytes = [.. Bytes, .. record.Span];

    public void Continue(ReadOnlySpan<byte> lines) => Bytes = [.. Bytes, .. lines];

    public long SetAside(long soundBytes, string into) => throw new NotSupportedException();
}
