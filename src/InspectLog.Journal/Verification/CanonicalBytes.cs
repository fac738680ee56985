using System.Buffers;
using System.Buffers.Text;
using System.Text;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Verification;

/// <summary>Recognises JSON in the canonical form of RFC 8785 by its bytes, without taking it apart. Whatever it does not
/// recognise may be canonical all the same: then <see cref="CanonicalJson"/> has to look.</summary>
/// <remarks>Bytes must be well-formed UTF-8; whoever calls has seen to that.</remarks>
internal static class CanonicalBytes
{
    private const int Deepest = 60; // JsonDocument goes to 64
    private const int ExactDigits = 15; // so many decimal digits of a number always come back from IEEE 754 double

    private static readonly SearchValues<byte> EndsPlainText =
        SearchValues.Create([(byte)'"', (byte)'\\', .. Enumerable.Range(0, ' ').Select(c => (byte)c)]);

    private static readonly SearchValues<byte> InNumbers = SearchValues.Create("0123456789+-.eE"u8);

    /// <summary>Where a value ends that is canonical for sure; -1 where that is not sure.</summary>
    public static int EndOfValue(ReadOnlySpan<byte> json, int at, int depth = 0) => depth > Deepest || at < 0 || at >= json.Length
        ? -1
        : json[at] switch
        {
            (byte)'{' => EndOfObject(json, at + 1, depth),
            (byte)'[' => EndOfArray(json, at + 1, depth),
            (byte)'"' => EndOfString(json, at),
            (byte)'t' => EndOfWord(json, at, "true"u8),
            (byte)'f' => EndOfWord(json, at, "false"u8),
            (byte)'n' => EndOfWord(json, at, "null"u8),
            _ => EndOfNumber(json, at),
        };

    /// <summary>Where a string ends, with its quotes; -1 where it is not surely spelled the canonical way.</summary>
    public static int EndOfString(ReadOnlySpan<byte> json, int at)
    {
        if (!Has(json, at, '"'))
        {
            return -1;
        }

        for (at++; ;)
        {
            var plain = json[at..].IndexOfAny(EndsPlainText);
            if (plain < 0)
            {
                return -1;
            }

            at += plain;
            if (json[at] == '"')
            {
                return at + 1;
            }

            at = EndOfEscape(json, at);
            if (at < 0)
            {
                return -1;
            }
        }
    }

    private static int EndOfObject(ReadOnlySpan<byte> json, int at, int depth)
    {
        if (Has(json, at, '}'))
        {
            return at + 1;
        }

        var before = ReadOnlySpan<byte>.Empty;
        for (var isFirst = true; ; isFirst = false)
        {
            var end = EndOfString(json, at);
            if (end < 0 || !Has(json, end, ':'))
            {
                return -1;
            }

            // Bytes of ASCII names have the order of UTF-16 units; of others the slow way tells.
            var name = json[(at + 1)..(end - 1)];
            if (!Ascii.IsValid(name) || name.Contains((byte)'\\') || (!isFirst && before.SequenceCompareTo(name) >= 0))
            {
                return -1;
            }

            before = name;
            at = EndOfValue(json, end + 1, depth + 1);
            if (at < 0 || !Has(json, at, ','))
            {
                return Has(json, at, '}') ? at + 1 : -1;
            }

            at++;
        }
    }

    private static int EndOfArray(ReadOnlySpan<byte> json, int at, int depth)
    {
        if (Has(json, at, ']'))
        {
            return at + 1;
        }

        while (true)
        {
            at = EndOfValue(json, at, depth + 1);
            if (at < 0 || !Has(json, at, ','))
            {
                return Has(json, at, ']') ? at + 1 : -1;
            }

            at++;
        }
    }

    private static int EndOfEscape(ReadOnlySpan<byte> json, int at)
    {
        if (json[at] != '\\' || at + 1 >= json.Length)
        {
            return -1;
        }

        if ("\"\\bfnrt"u8.Contains(json[at + 1]))
        {
            return at + 2;
        }

        // Control characters without a letter of their own: four digits, in lower case.
        return at + 6 <= json.Length && json.Slice(at + 1, 3).SequenceEqual("u00"u8) && json[at + 4] is (byte)'0' or (byte)'1'
            && "0123456789abcdef"u8.Contains(json[at + 5]) && !HasLetter(json[at + 4], json[at + 5])
            ? at + 6
            : -1;
    }

    private static bool HasLetter(byte high, byte low) => high == '0' && "89acd"u8.Contains(low); // \b \t \n \f \r

    private static int EndOfNumber(ReadOnlySpan<byte> json, int at)
    {
        var length = json[at..].IndexOfAnyExcept(InNumbers);
        var number = length < 0 ? json[at..] : json.Slice(at, length);
        return IsPlainDecimal(number) || IsSpelledShortest(number) ? at + number.Length : -1;
    }

    /// <summary>Whether it is a decimal of few enough digits and no exponent: then no shorter one names the same double.
    /// </summary>
    private static bool IsPlainDecimal(ReadOnlySpan<byte> number)
    {
        var digits = number.Length > 0 && number[0] == '-' ? number[1..] : number;
        var point = digits.IndexOf((byte)'.');
        var whole = point < 0 ? digits : digits[..point];
        var part = point < 0 ? default : digits[(point + 1)..];
        return digits.Length is > 0 and <= ExactDigits + 1
            && !whole.ContainsAnyExceptInRange((byte)'0', (byte)'9') && !part.ContainsAnyExceptInRange((byte)'0', (byte)'9')
            && whole.Length + part.Length <= ExactDigits
            && (whole.Length == 1 || (whole.Length > 1 && whole[0] != '0'))
            && (point < 0 ? number is not [(byte)'-', (byte)'0'] : part.Length > 0 && part[^1] != '0')
            && !(whole is [(byte)'0'] && part.StartsWith("000000"u8));
    }

    private static bool IsSpelledShortest(ReadOnlySpan<byte> number)
    {
        if (!Utf8Parser.TryParse(number, out double value, out var used) || used != number.Length || !double.IsFinite(value))
        {
            return false;
        }

        var spelled = EcmaNumber.Format(value);
        Span<byte> bytes = stackalloc byte[40];
        return Encoding.ASCII.TryGetBytes(spelled, bytes, out var count) && number.SequenceEqual(bytes[..count]);
    }

    private static int EndOfWord(ReadOnlySpan<byte> json, int at, ReadOnlySpan<byte> word) =>
        json[at..].StartsWith(word) ? at + word.Length : -1;

    private static bool Has(ReadOnlySpan<byte> json, int at, char sign) => at >= 0 && at < json.Length && json[at] == sign;
}
