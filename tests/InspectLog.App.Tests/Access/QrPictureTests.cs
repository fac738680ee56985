using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ZXing;

namespace InspectLog.App.Tests.Access;

/// <summary>The pictures for the camera, read by a reader that is not ours (ZXing, ISO/IEC 18004).</summary>
public sealed partial class QrPictureTests
{
    private const int DotSize = 4;

    [Fact]
    public async Task Picture_of_a_code_holds_the_address_with_the_secret()
    {
        await using var app = await LanApp.StartAsync();
        var made = await LanApp.SendAsync(app.Workshop, "/devices", ("person", "Ines Vale"), ("role", "technician"));

        var page = await LanApp.PageAsync(app.Workshop, made.Headers.Location!.ToString());

        var read = new Uri(Read(page.QuerySelector("svg.qr")!));
        Assert.Equal(new Uri(app.Lan, "/pair"), new Uri(read.GetLeftPart(UriPartial.Path)));
        Assert.Equal(43, read.Fragment.Length - 1);
        var paired = await LanApp.SendAsync(app.NewPhone(), "/pair", ("secret", read.Fragment[1..]));
        Assert.Equal("/", paired.Headers.Location!.ToString());
    }

    [Fact]
    public async Task Picture_on_the_page_of_devices_leads_to_the_certificate()
    {
        await using var app = await LanApp.StartAsync();

        var page = await LanApp.PageAsync(app.Workshop, "/devices");

        Assert.Equal(app.Addresses.Certificate[0].ToString(), Read(page.QuerySelector("svg.qr")!));
    }

    internal static string Read(IElement picture)
    {
        var side = int.Parse(picture.GetAttribute("viewBox")!.Split(' ')[2], CultureInfo.InvariantCulture) * DotSize;
        var light = new byte[side * side];
        Array.Fill(light, byte.MaxValue);
        foreach (Match dot in Dot().Matches(picture.QuerySelector("path")!.GetAttribute("d")!))
        {
            var (left, top) = (Number(dot, 1) * DotSize, Number(dot, 2) * DotSize);
            for (var row = top; row < top + DotSize; row++)
            {
                Array.Clear(light, row * side + left, DotSize);
            }
        }

        var reader = new BarcodeReaderGeneric { Options = { PossibleFormats = [BarcodeFormat.QR_CODE] } };
        return reader.Decode(new RGBLuminanceSource(light, side, side, RGBLuminanceSource.BitmapFormat.Gray8)).Text;
    }

    private static int Number(Match dot, int group) => int.Parse(dot.Groups[group].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"M(\d+) (\d+)h1v1h-1z")]
    private static partial Regex Dot();
}
