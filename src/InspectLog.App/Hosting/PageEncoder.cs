using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace InspectLog.App.Hosting;

/// <summary>Encodes texts for pages. Letters of every script stay themselves, ° and Ω too. Signs that do not show but turn
/// the letters after them round, or mean something to a terminal (Unicode, UAX #9; the control characters), are shown as the
/// replacement character: a form leaves them out, but a journal may come from anywhere.</summary>
public sealed unsafe class PageEncoder : HtmlEncoder
{
    private const char Replacement = '\uFFFD';

    private static readonly HtmlEncoder Inner = MakeInner();

    public override int MaxOutputCharactersPerInputCharacter => Inner.MaxOutputCharactersPerInputCharacter;

    public override int FindFirstCharacterToEncode(char* text, int textLength) => Inner.FindFirstCharacterToEncode(text, textLength);

    public override bool WillEncode(int unicodeScalar) => Inner.WillEncode(unicodeScalar);

    public override bool TryEncodeUnicodeScalar(int unicodeScalar, char* buffer, int bufferLength, out int numberOfCharactersWritten)
    {
        if (!IsHidden(unicodeScalar))
        {
            return Inner.TryEncodeUnicodeScalar(unicodeScalar, buffer, bufferLength, out numberOfCharactersWritten);
        }

        numberOfCharactersWritten = bufferLength > 0 ? 1 : 0;
        if (bufferLength > 0)
        {
            *buffer = Replacement;
        }

        return bufferLength > 0;
    }

    /// <summary>The first strong isolate and its end stay: names are isolated by them.</summary>
    private static bool IsHidden(int sign) =>
        sign is (< 0x20 and not ('\t' or '\n' or '\r')) or (>= 0x7F and <= 0x9F) or (>= 0x202A and <= 0x202E) or 0x2066 or 0x2067;

    private static HtmlEncoder MakeInner()
    {
        var settings = new TextEncoderSettings(UnicodeRanges.All);
        settings.ForbidCharacters([.. Enumerable.Range(0, char.MaxValue).Where(IsHidden).Select(sign => (char)sign)]);
        return Create(settings);
    }
}
