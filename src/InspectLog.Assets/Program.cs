using InspectLog.Assets;

// Styles and scripts of single pages, which no other page shall load, lie in folders of this name.
const string Apart = "apart";

// inspectlog-assets WWWROOT TARGET: makes what browsers load out of wwwroot.
if (args is not [var root, var target])
{
    Console.Error.WriteLine("Two folders are wanted: wwwroot, and where to put what browsers load.");
    return 2;
}

try
{
    var vendor = Path.Combine(root, "vendor");
    var shipped = new ShippedFiles(target);
    shipped.AddText("app.css", StyleBundle.Of(Path.Combine(root, "css"), "app.css"));
    shipped.AddText("app.js", ModuleBundle.Of(TextsIn(Path.Combine(root, "js"), "*.js"), "main.js"));
    foreach (var style in Directory.GetFiles(Path.Combine(root, "css", Apart), "*.css").Order(StringComparer.Ordinal))
    {
        shipped.AddText(Path.GetFileName(style), StyleBundle.One(style));
    }

    var apart = TextsIn(Path.Combine(root, "js", Apart), "*.js");
    foreach (var script in apart.Keys.Order(StringComparer.Ordinal))
    {
        shipped.AddText(script, ModuleBundle.Of(apart, script));
    }

    foreach (var script in Directory.GetFiles(vendor, "*.js").Order(StringComparer.Ordinal))
    {
        shipped.Add(Path.GetFileName(script), File.ReadAllBytes(script));
    }

    shipped.WriteList();
    return 0;
}
catch (Exception e) when (e is InvalidDataException or IOException)
{
    Console.Error.WriteLine(e.Message);
    return 1;
}

static Dictionary<string, string> TextsIn(string folder, string pattern) =>
    Directory.GetFiles(folder, pattern).ToDictionary(file => Path.GetFileName(file), File.ReadAllText);
