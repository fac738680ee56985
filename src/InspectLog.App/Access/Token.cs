using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace InspectLog.App.Access;

/// <summary>What a paired device shows at each visit: 256 random bits in a cookie that scripts cannot read and that goes to
/// this program alone.</summary>
/// <param name="Value">The bits, Base64url.</param>
public sealed record Token(string Value)
{
    // The prefix binds the cookie to this very host, to HTTPS and to the whole site (RFC 6265bis, 4.1.3.2).
    private const string CookieName = "__Host-inspectlog";
    private const int RandomBytes = 32;
    private const int Signs = 43;

    /// <summary>How long a browser may keep it.</summary>
    private static readonly TimeSpan Life = TimeSpan.FromDays(365);

    /// <summary>A token that was never there before.</summary>
    public static Token Make() => new(Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(RandomBytes)));

    /// <summary>The token a request shows; null where it shows none.</summary>
    public static Token? Shown(HttpRequest request) => Read(request.Cookies[CookieName]);

    /// <summary>A token as it was written down; null where that is none.</summary>
    public static Token? Read(string? text) =>
        text is { Length: Signs } && text.All(sign => char.IsAsciiLetterOrDigit(sign) || sign is '-' or '_') ? new(text) : null;

    /// <summary>SHA-256 of it, lower-case hex: all that is kept here.</summary>
    public string Sha256 => Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(Value)));

    /// <summary>Whether its hash is this one.</summary>
    public bool Is(string sha256) => Sha256 == sha256;

    /// <summary>Gives it to a browser.</summary>
    public void GiveTo(HttpResponse response, DateTimeOffset now, DateTimeOffset? until) => response.Cookies.Append(CookieName, Value, new CookieOptions
    {
        Secure = true,
        HttpOnly = true,
        SameSite = SameSiteMode.Strict,
        Path = "/",
        MaxAge = until is { } end && end - now < Life ? end - now : Life,
    });
}
