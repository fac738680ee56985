using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>How a page is looked at: the width of the window and the colours asked for.</summary>
/// <param name="Width">Pixels.</param>
/// <param name="Scheme">Light or dark.</param>
internal sealed record Look(int Width, ColorScheme Scheme)
{
    private const int Height = 844;

    /// <summary>On a phone and on a laptop, light and dark.</summary>
    public static IReadOnlyList<Look> All { get; } =
    [
        .. from width in new[] { 390, 1280 }
           from scheme in new[] { ColorScheme.Light, ColorScheme.Dark }
           select new Look(width, scheme),
    ];

    /// <summary>Gives an open page this look, without loading it again.</summary>
    public async Task TakeOnAsync(IPage page)
    {
        await page.SetViewportSizeAsync(Width, Height);
        await page.EmulateMediaAsync(new() { ColorScheme = Scheme });
    }

    public override string ToString() => $"{Width} px, {(Scheme == ColorScheme.Dark ? "dark" : "light")}";
}
