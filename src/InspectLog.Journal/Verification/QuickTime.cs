using System.Buffers.Text;

namespace InspectLog.Journal.Verification;

/// <summary>Recognises the times and offsets of lines by their bytes.</summary>
internal static class QuickTime
{
    /// <summary>Whether a time and an offset are surely spelled as the program writes them and make a time of day.</summary>
    /// <param name="time">24 bytes.</param>
    /// <param name="offset">6 bytes.</param>
    public static bool IsSound(ReadOnlySpan<byte> time, ReadOnlySpan<byte> offset) =>
        time.Length == 24 && offset.Length == 6 && IsTime(time) && IsOffset(offset);

    /// <summary>A time that was found sound.</summary>
    public static DateTimeOffset TimeOf(ReadOnlySpan<byte> time) => new(
        Number(time[..4]), Number(time[5..7]), Number(time[8..10]), Number(time[11..13]), Number(time[14..16]), Number(time[17..19]), Number(time[20..23]), TimeSpan.Zero);

    /// <summary>An offset that was found sound.</summary>
    public static TimeSpan OffsetOf(ReadOnlySpan<byte> offset) =>
        new TimeSpan(Number(offset[1..3]), Number(offset[4..]), 0) is var size && offset[0] == '-' ? -size : size;

    private static bool IsTime(ReadOnlySpan<byte> time) =>
        time[4] == '-' && time[7] == '-' && time[10] == 'T' && time[13] == ':' && time[16] == ':' && time[19] == '.' && time[23] == 'Z'
        && Number(time[..4]) is > 1 and < 9999 and var year
        && Number(time[5..7]) is >= 1 and <= 12 and var month
        && Number(time[8..10]) is >= 1 and var day && day <= DateTime.DaysInMonth(year, month)
        && Number(time[11..13]) is >= 0 and < 24
        && Number(time[14..16]) is >= 0 and < 60
        && Number(time[17..19]) is >= 0 and < 60
        && Number(time[20..23]) >= 0;

    private static bool IsOffset(ReadOnlySpan<byte> offset) =>
        offset[0] is (byte)'+' or (byte)'-' && offset[3] == ':'
        && Number(offset[1..3]) is >= 0 and < 14 and var hours
        && Number(offset[4..]) is >= 0 and < 60 and var minutes
        && (offset[0] == '+' || hours + minutes > 0);

    private static int Number(ReadOnlySpan<byte> digits) =>
        !digits.ContainsAnyExceptInRange((byte)'0', (byte)'9') && Utf8Parser.TryParse(digits, out int number, out _) ? number : -1;
}
