using System.Security.Cryptography;

namespace InspectLog.Archives.Tests.Support;

/// <summary>A bag read in few lines from the text of RFC 8493, sharing no code with the program.</summary>
internal static class IndependentBagReader
{
    public static List<string> Faults(string bag)
    {
        var faults = new List<string>();
        if (File.ReadAllText(Path.Combine(bag, "bagit.txt")) != "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n")
        {
            faults.Add("bagit.txt");
        }

        var listed = new HashSet<string>();
        foreach (var manifest in new[] { "manifest-sha256.txt", "tagmanifest-sha256.txt" })
        {
            foreach (var line in File.ReadAllLines(Path.Combine(bag, manifest)))
            {
                var (sum, name) = (line[..64], line[64..].TrimStart().Replace("%0A", "\n").Replace("%0D", "\r").Replace("%25", "%"));
                listed.Add(name);
                if (Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(bag, name)))) != sum)
                {
                    faults.Add(name);
                }
            }
        }

        var there = Directory.GetFiles(bag, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(bag, file));
        faults.AddRange(there.Where(file => !listed.Contains(file) && file != "tagmanifest-sha256.txt"));
        var payload = Directory.GetFiles(Path.Combine(bag, "data"), "*", SearchOption.AllDirectories);
        var oxum = $"Payload-Oxum: {payload.Sum(file => new FileInfo(file).Length)}.{payload.Length}";
        return File.ReadAllLines(Path.Combine(bag, "bag-info.txt")).Contains(oxum) ? faults : [.. faults, oxum];
    }
}
