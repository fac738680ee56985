using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>One line of a journal file: the canonical JSON of an entry, as FORMAT.md describes.</summary>
/// <remarks>The hash covers everything but the body and its salt, and in their place the hash of the two. A line
/// therefore keeps its hash, and its place in the chain, when its body and salt are taken out.</remarks>
internal sealed record EntryLine(
    long Sequence,
    DateTimeOffset Time,
    TimeSpan Offset,
    string? Actor,
    string Kind,
    int Version,
    string BodyHash,
    string Previous,
    string? Device)
{
    /// <summary>The previous hash of a first entry.</summary>
    public static readonly string NoPrevious = new('0', 64);

    private const int SaltBytes = 16;
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    /// <summary>Writes the line of a new entry, without the line's end.</summary>
    /// <exception cref="ArgumentException">The body holds a number that is not finite.</exception>
    public static byte[] Write(
        long sequence, DateTimeOffset now, Author author, EntryBody body, string previous, byte[] salt)
    {
        var kind = EntryKinds.Of(body);
        var json = BodyJson.Write(body);
        var head = new EntryLine(
            sequence, now.ToUniversalTime(), now.Offset, author.Name, kind.Kind, kind.Version, HashOf(salt, json), previous, author.Device);
        return head.Encode(head.Hash(), json, salt);
    }

    /// <summary>A fresh salt.</summary>
    public static byte[] NewSalt() => RandomNumberGenerator.GetBytes(SaltBytes);

    /// <summary>Reads a line and checks all of it but its place: spelling and hashes.</summary>
    /// <param name="line">The line without its end.</param>
    /// <exception cref="FormatException">What is wrong with it, in a clause that follows "line 7: ".</exception>
    public static JournalEntry Read(ReadOnlyMemory<byte> line)
    {
        using var document = CanonicalJson.Parse(line);
        var (head, hash, body, salt) = Members(document.RootElement);
        Require(head.Actor is null ? IsHash(hash) && head.Device is null : head.Hash() == hash, "its hash is not that of what it says");
        var json = body is { } given ? CanonicalJson.Of(given) : null;
        Require((json is null) == (salt is null), "its body and its salt must be there both or neither");
        Require(json is null || HashOf(salt, json) == head.BodyHash, "its body was changed");
        Require(line.Span.SequenceEqual(head.Encode(hash, json, salt)), "it is not spelled the way the program writes");
        Require(head.HasTimeOfDay(), "its time and offset make no time of day");
        return head.ToEntry(hash, body);
    }

    /// <summary>A line without its body and salt; its hash and its place stay good.</summary>
    /// <param name="line">A sound line, without its end.</param>
    /// <exception cref="FormatException">It is none.</exception>
    public static byte[] WithoutBody(ReadOnlyMemory<byte> line)
    {
        using var document = CanonicalJson.Parse(line);
        var (head, hash, _, _) = Members(document.RootElement);
        return head.Encode(hash, body: null, salt: null);
    }

    /// <summary>A line that no longer says who made it, and with which device. Its hash stays and cannot be worked out again, so
    /// that what is left needs a tombstone to stand for it.</summary>
    /// <param name="line">A sound line, without its end.</param>
    /// <returns>The line, and the hash of what is left of its head.</returns>
    /// <exception cref="FormatException">It is none.</exception>
    public static (byte[] Line, string RestHash) WithoutActor(ReadOnlyMemory<byte> line)
    {
        using var document = CanonicalJson.Parse(line);
        var (head, hash, body, salt) = Members(document.RootElement);
        var nameless = head with { Actor = null, Device = null };
        return (nameless.Encode(hash, body is { } given ? CanonicalJson.Of(given) : null, salt), nameless.Hash());
    }

    /// <summary>The entry's hash: SHA-256 of the canonical form of the head.</summary>
    private string Hash() => Hex(Encoding.UTF8.GetBytes(Spell(hash: null, body: null, salt: null)));

    private byte[] Encode(string hash, byte[]? body, byte[]? salt) => Encoding.UTF8.GetBytes(Spell(
        hash,
        body is null ? null : Encoding.UTF8.GetString(body),
        salt is null ? null : Convert.ToBase64String(salt)));

    /// <summary>The members in the order of RFC 8785, those that are null left out.</summary>
    private string Spell(string? hash, string? body, string? salt)
    {
        var text = new StringBuilder();
        Text("actor", Actor);
        Raw("body", body);
        Text("bodyHash", BodyHash);
        Text("device", Device);
        Text("hash", hash);
        Text("kind", Kind);
        Text("offset", WriteOffset(Offset));
        Text("previous", Previous);
        Text("salt", salt);
        Raw("sequence", Sequence.ToString(CultureInfo.InvariantCulture));
        Text("time", Time.ToString(TimeFormat, CultureInfo.InvariantCulture));
        Raw("version", Version.ToString(CultureInfo.InvariantCulture));
        return text.Append('}').ToString();

        void Raw(string name, string? json)
        {
            if (json is not null)
            {
                CanonicalJson.AppendString(text.Append(text.Length == 0 ? '{' : ','), name).Append(':').Append(json);
            }
        }

        void Text(string name, string? value) =>
            Raw(name, value is null ? null : CanonicalJson.AppendString(new StringBuilder(), value).ToString());
    }

    private JournalEntry ToEntry(string hash, JsonElement? body)
    {
        var known = body is { } json ? BodyJson.Read(Kind, Version, json) : null;
        return new JournalEntry(Sequence, Time, Offset, Actor ?? Erased.Name, known, Kind, Version, Previous, hash)
        {
            Device = Device,
            Rest = Actor is null ? Hash() : null,
            IsWithheld = body is null,
            UnreadBody = known is null ? body?.GetRawText() : null,
        };
    }

    private static (EntryLine Head, string Hash, JsonElement? Body, byte[]? Salt) Members(JsonElement line)
    {
        try
        {
            var head = new EntryLine(
                line.GetProperty("sequence").GetInt64(),
                ReadTime(Text("time")),
                ReadOffset(Text("offset")),
                Optional("actor")?.GetString(),
                Text("kind"),
                line.GetProperty("version").GetInt32(),
                Text("bodyHash"),
                Text("previous"),
                Optional("device")?.GetString());
            return (head, Text("hash"), Optional("body"), Optional("salt")?.GetBytesFromBase64());
        }
        catch (Exception problem)
            when (problem is KeyNotFoundException or InvalidOperationException or FormatException or OverflowException)
        {
            throw new FormatException("it is not an entry: a member is missing or is not of its sort", problem);
        }

        string Text(string name) => line.GetProperty(name).GetString() ?? throw new InvalidOperationException(name);

        JsonElement? Optional(string name) => line.TryGetProperty(name, out var value) ? value : null;
    }

    private static bool IsHash(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);

    private static string HashOf(ReadOnlySpan<byte> salt, ReadOnlySpan<byte> body) => Hex([.. salt, .. body]);

    private static string Hex(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static DateTimeOffset ReadTime(string text) => DateTimeOffset.ParseExact(
        text, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    /// <summary>Whether a clock can show it: the calendar has years 1 to 9999, and no offset beyond 14 hours.</summary>
    private bool HasTimeOfDay() =>
        Offset.Duration() <= TimeSpan.FromHours(14)
        && (Offset < TimeSpan.Zero ? Time - DateTimeOffset.MinValue >= -Offset : DateTimeOffset.MaxValue - Time >= Offset);

    private static string WriteOffset(TimeSpan offset) =>
        (offset < TimeSpan.Zero ? '-' : '+') + offset.ToString(@"hh\:mm", CultureInfo.InvariantCulture);

    private static TimeSpan ReadOffset(string text)
    {
        var size = TimeSpan.ParseExact(text.AsSpan(Math.Min(1, text.Length)), @"hh\:mm", CultureInfo.InvariantCulture);
        return text[0] == '-' ? -size : size;
    }

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new FormatException(otherwise);
        }
    }
}
