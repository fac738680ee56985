using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text.Unicode;

namespace InspectLog.Journal.Verification;

/// <summary>A line of a journal that was found sound by its bytes alone, without making anything of it.</summary>
internal readonly ref struct QuickLine
{
    private const int HashDigits = 64;
    private const int TimeLength = 24; // 2026-11-25T10:30:00.123Z
    private const int OffsetLength = 6; // +01:00

    /// <summary>Its sequence.</summary>
    public long Sequence { get; private init; }

    /// <summary>Its hash, as digits.</summary>
    public ReadOnlySpan<byte> Hash { get; private init; }

    /// <summary>The hash of the line before, as digits.</summary>
    public ReadOnlySpan<byte> Previous { get; private init; }

    /// <summary>Its kind, as it is spelled.</summary>
    public ReadOnlySpan<byte> Kind { get; private init; }

    /// <summary>Who made it, as it is spelled.</summary>
    public ReadOnlySpan<byte> Actor { get; private init; }

    /// <summary>With which device, as it is spelled; empty where none is named.</summary>
    public ReadOnlySpan<byte> Device { get; private init; }

    /// <summary>When, 24 digits and signs.</summary>
    public ReadOnlySpan<byte> Time { get; private init; }

    /// <summary>The offset of the clock, 6 digits and signs.</summary>
    public ReadOnlySpan<byte> Offset { get; private init; }

    /// <summary>Its body; empty where it is withheld.</summary>
    public ReadOnlySpan<byte> Body { get; private init; }

    /// <summary>Its version.</summary>
    public int Version { get; private init; }

    /// <summary>Whether its body is withheld.</summary>
    public bool IsWithheld { get; private init; }

    /// <summary>Reads a line; false where it is not surely sound. It is written the way the program writes, member by member,
    /// or the slow way has to look.</summary>
    /// <param name="line">The line without its end.</param>
    /// <param name="room">Room for as many bytes as the line has.</param>
    /// <param name="read">What it is.</param>
    public static bool TryRead(ReadOnlySpan<byte> line, Span<byte> room, out QuickLine read)
    {
        read = default;
        if (!Utf8.IsValid(line))
        {
            return false;
        }

        var members = new QuickMembers(line);
        var actor = members.Text("{\"actor\":"u8);
        var body = members.Value(",\"body\":"u8);
        var bodyHash = members.Quoted(",\"bodyHash\":"u8, HashDigits);
        var device = members.OptionalText(",\"device\":"u8);
        var hashFrom = members.At;
        var hash = members.Quoted(",\"hash\":"u8, HashDigits);
        var hashTo = members.At;
        var kind = members.Text(",\"kind\":"u8);
        var offset = members.Quoted(",\"offset\":"u8, OffsetLength);
        var previous = members.Quoted(",\"previous\":"u8, HashDigits);
        var saltFrom = members.At;
        var salt = members.OptionalText(",\"salt\":"u8);
        var saltTo = members.At;
        var isSequence = members.TryNumber(",\"sequence\":"u8, out var sequence);
        var time = members.Quoted(",\"time\":"u8, TimeLength);
        var isVersion = members.TryNumber(",\"version\":"u8, out var version);
        if (members.Failed || !members.EndsWithBrace() || !isSequence || !isVersion || version > int.MaxValue
            || actor.IsEmpty || body.IsEmpty != salt.IsEmpty || !QuickTime.IsSound(time, offset))
        {
            return false;
        }

        read = new QuickLine
        {
            Sequence = sequence,
            Hash = hash,
            Previous = previous,
            Kind = kind[1..^1],
            Actor = actor[1..^1],
            Device = device.IsEmpty ? default : device[1..^1],
            Time = time,
            Offset = offset,
            Body = body,
            Version = (int)version,
            IsWithheld = body.IsEmpty,
        };

        // The head is the line without body, hash and salt, as it stands.
        var bodyLength = body.IsEmpty ? 0 : ",\"body\":"u8.Length + body.Length;
        var bodyFrom = "{\"actor\":"u8.Length + actor.Length;
        return HashOf(room, line[..bodyFrom], line[(bodyFrom + bodyLength)..hashFrom], line[hashTo..saltFrom], line[saltTo..], hash)
            && (body.IsEmpty || IsBodyHash(room, salt[1..^1], body, bodyHash));
    }

    private static bool HashOf(
        Span<byte> room, ReadOnlySpan<byte> one, ReadOnlySpan<byte> two, ReadOnlySpan<byte> three, ReadOnlySpan<byte> four, ReadOnlySpan<byte> hash)
    {
        one.CopyTo(room);
        two.CopyTo(room[one.Length..]);
        three.CopyTo(room[(one.Length + two.Length)..]);
        four.CopyTo(room[(one.Length + two.Length + three.Length)..]);
        return Is(hash, room[..(one.Length + two.Length + three.Length + four.Length)]);
    }

    private static bool IsBodyHash(Span<byte> room, ReadOnlySpan<byte> salt, ReadOnlySpan<byte> body, ReadOnlySpan<byte> hash)
    {
        if (Base64.DecodeFromUtf8(salt, room, out var used, out var length) != System.Buffers.OperationStatus.Done
            || used != salt.Length || !IsSpelledSo(salt, room[..length]))
        {
            return false;
        }

        body.CopyTo(room[length..]);
        return Is(hash, room[..(length + body.Length)]);
    }

    /// <summary>Whether bytes are spelled so and not otherwise: Base64 leaves bits over at its end.</summary>
    private static bool IsSpelledSo(ReadOnlySpan<byte> salt, ReadOnlySpan<byte> bytes)
    {
        Span<byte> spelled = stackalloc byte[64];
        return bytes.Length <= 45
            && Base64.EncodeToUtf8(bytes, spelled, out _, out var length) == System.Buffers.OperationStatus.Done
            && salt.SequenceEqual(spelled[..length]);
    }

    private static bool Is(ReadOnlySpan<byte> digits, ReadOnlySpan<byte> bytes)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        Span<byte> spelled = stackalloc byte[HashDigits];
        SHA256.HashData(bytes, hash);
        return Convert.TryToHexStringLower(hash, spelled, out _) && digits.SequenceEqual(spelled);
    }
}
