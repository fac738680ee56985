using System.Buffers.Text;

namespace InspectLog.Journal.Verification;

/// <summary>Goes through the members of a line in their order. Once one is not there as expected, all further ones are
/// empty and <see cref="Failed"/> says so.</summary>
/// <param name="line">The line.</param>
internal ref struct QuickMembers(ReadOnlySpan<byte> line)
{
    private const int MostDigits = 18; // every such number is a long, and none is rounded on the way

    private readonly ReadOnlySpan<byte> _line = line;

    /// <summary>Where the next member begins.</summary>
    public int At { get; private set; }

    /// <summary>Whether a member was not as expected.</summary>
    public bool Failed { get; private set; }

    /// <summary>A string that must be there, with its quotes.</summary>
    public ReadOnlySpan<byte> Text(ReadOnlySpan<byte> name) =>
        IsNext(name) ? Taken(name, CanonicalBytes.EndOfString(_line, At + name.Length)) : Fail();

    /// <summary>A string that may be there, with its quotes; empty where it is not.</summary>
    public ReadOnlySpan<byte> OptionalText(ReadOnlySpan<byte> name) => IsNext(name) ? Text(name) : default;

    /// <summary>A value that may be there; empty where it is not.</summary>
    public ReadOnlySpan<byte> Value(ReadOnlySpan<byte> name) =>
        IsNext(name) ? Taken(name, CanonicalBytes.EndOfValue(_line, At + name.Length)) : default;

    /// <summary>What stands between the quotes of a string of a certain length in plain ASCII.</summary>
    public ReadOnlySpan<byte> Quoted(ReadOnlySpan<byte> name, int length)
    {
        var text = Text(name);
        return text.Length == length + 2 && System.Text.Ascii.IsValid(text) ? text[1..^1] : Fail();
    }

    /// <summary>A whole number from 0, as it is spelled canonically.</summary>
    public bool TryNumber(ReadOnlySpan<byte> name, out long number)
    {
        number = 0;
        if (!IsNext(name))
        {
            Failed = true;
            return false;
        }

        var digits = _line[(At + name.Length)..];
        var length = digits.IndexOfAnyExceptInRange((byte)'0', (byte)'9');
        if (length is < 1 or > MostDigits || (length > 1 && digits[0] == '0') || !Utf8Parser.TryParse(digits[..length], out number, out _))
        {
            Failed = true;
            return false;
        }

        At += name.Length + length;
        return true;
    }

    /// <summary>Whether nothing follows but the end of the object.</summary>
    public readonly bool EndsWithBrace() => At == _line.Length - 1 && _line[At] == '}';

    private readonly bool IsNext(ReadOnlySpan<byte> name) => !Failed && _line[At..].StartsWith(name);

    private ReadOnlySpan<byte> Taken(ReadOnlySpan<byte> name, int end)
    {
        if (end < 0)
        {
            return Fail();
        }

        var value = _line[(At + name.Length)..end];
        At = end;
        return value;
    }

    private ReadOnlySpan<byte> Fail()
    {
        Failed = true;
        return default;
    }
}
