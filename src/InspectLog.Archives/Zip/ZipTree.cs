using System.IO.Compression;
using InspectLog.Archives.BagIt;

namespace InspectLog.Archives.Zip;

/// <summary>What a ZIP holds, as a bag: the one folder in it, or what lies in none. Nothing is unpacked to disk.</summary>
public sealed class ZipTree : IFileTree
{
    private const int LinkMode = 0xA000;
    private const int ModeMask = 0xF000;

    private readonly Stream _file;
    private readonly ZipArchive? _zip;
    private readonly TreeFiles _files = new();
    private readonly Dictionary<string, ZipArchiveEntry> _entries = new(StringComparer.Ordinal);

    private readonly List<ZipArchiveEntry> _listed = [];

    private ZipTree(Stream file, ZipBounds bounds)
    {
        _file = file;
        _zip = Read(file, bounds);
        if (_zip is not null && IsWithin(bounds))
        {
            Folder = FolderOf(_zip);
            TakeAll();
        }

        _files.Finish();
    }

    /// <inheritdoc/>
    public IReadOnlyDictionary<string, long> Lengths => _files.Lengths;

    /// <inheritdoc/>
    public IReadOnlyList<BagFault> Faults => _files.Faults;

    /// <summary>The folder the bag lies in, with its slash; empty where it lies in none.</summary>
    internal string Folder { get; } = "";

    /// <summary>Files in the order in which the ZIP lists them, with what it says of each.</summary>
    internal IEnumerable<(string Path, long Length, uint Crc32)> Listed => _listed.Select(entry => (entry.FullName, entry.Length, entry.Crc32));

    /// <summary>The ZIP itself.</summary>
    internal Stream File => _file;

    /// <summary>Looks into a ZIP file.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static ZipTree Of(string path, ZipBounds? bounds = null) =>
        new(new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, 1 << 16), bounds ?? ZipBounds.Usual);

    /// <summary>Looks into a ZIP.</summary>
    /// <param name="zip">Its bytes; closed with this.</param>
    /// <param name="bounds">How much it may hold.</param>
    public static ZipTree Of(Stream zip, ZipBounds? bounds = null) => new(zip, bounds ?? ZipBounds.Usual);

    /// <inheritdoc/>
    public Stream Open(string path)
    {
        if (!_entries.TryGetValue(path, out var entry))
        {
            throw new FileNotFoundException("No file of this bag.", path);
        }

        try
        {
            return new LengthHeld(entry.Open(), entry.Length);
        }
        catch (Exception problem) when (problem is ArgumentException or NotSupportedException or IndexOutOfRangeException)
        {
            throw new InvalidDataException("This file of the ZIP cannot be read.", problem);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _zip?.Dispose();
        _file.Dispose();
    }

    private ZipArchive? Read(Stream file, ZipBounds bounds)
    {
        try
        {
            if (ZipTail.DirectoryStart(file) is not { } start || start < 0 || start > file.Length)
            {
                _files.Refuse("", "is no ZIP file, or its end is missing");
                return null;
            }

            if (file.Length - start > (long)bounds.Entries * ZipBounds.DirectoryEntry)
            {
                _files.Refuse("", $"lists more than {bounds.Entries} files");
                return null;
            }

            var zip = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: true);
            _ = zip.Entries.Count; // the list is read only now
            return zip;
        }
        catch (Exception damage) when (damage is InvalidDataException or EndOfStreamException or ArgumentException or OverflowException or NotSupportedException)
        {
            _files.Refuse("", "is no ZIP file that can be read: its list of files is damaged");
            return null;
        }
    }

    private bool IsWithin(ZipBounds bounds)
    {
        if (_zip!.Entries.Count > bounds.Entries)
        {
            _files.Refuse("", $"lists more than {bounds.Entries} files");
            return false;
        }

        var (unpacked, packed) = (0L, 0L);
        foreach (var entry in _zip.Entries)
        {
            // Of a length that is no length nothing more is added up.
            if (entry.Length < 0 || entry.CompressedLength < 0 || (unpacked += entry.Length) > bounds.Bytes || (packed += entry.CompressedLength) > _file.Length)
            {
                _files.Refuse("", "says of its files that they are larger than they can be");
                return false;
            }
        }

        if (unpacked <= _file.Length * bounds.Ratio)
        {
            return true;
        }

        _files.Refuse("", $"would become more than {bounds.Ratio} times as large as it is");
        return false;
    }

    /// <summary>The one folder that everything lies in, where there is one with a bag in it.</summary>
    private static string FolderOf(ZipArchive zip)
    {
        var folders = zip.Entries.Select(entry => entry.FullName.Split('/') is [var first, _, ..] ? first + "/" : "").Distinct().ToList();
        return folders is [{ Length: > 0 } one] && BagPath.Fault(one.TrimEnd('/')) is null && one != "data/" ? one : "";
    }

    private void TakeAll()
    {
        foreach (var entry in _zip!.Entries)
        {
            if (entry.FullName.EndsWith('/') && entry.Length == 0)
            {
                if (entry.FullName != Folder && BagPath.Fault(entry.FullName[..^1]) is { } fault)
                {
                    _files.Refuse(entry.FullName, fault);
                }
            }
            else if ((entry.ExternalAttributes >> 16 & ModeMask) == LinkMode)
            {
                _files.Refuse(entry.FullName, "is a link, and links are not followed");
            }
            else if (entry.IsEncrypted)
            {
                _files.Refuse(entry.FullName, "is encrypted. Unpack it with its password, and take the folder");
            }
            else if (_files.Add(entry.FullName[Folder.Length..], entry.Length))
            {
                _entries.Add(entry.FullName[Folder.Length..], entry);
                _listed.Add(entry);
            }
        }
    }
}
