using System.Buffers.Binary;

namespace InspectLog.Dictation.Hearing;

/// <summary>Walks a Whisper model file in whisper.cpp's format and tells whether every part is there.</summary>
/// <remarks>whisper.cpp (as in Whisper.net 1.9.1) takes a file that ends before its first tensor for a test model, loads
/// it and crashes later; some malformed tensors crash it at once. So nothing goes to it that this walk refuses.
/// Layout: whisper_model_load in whisper.cpp's src/whisper.cpp, block sizes in ggml's ggml-common.h.</remarks>
internal static class WhisperModelLayout
{
    private const uint Magic = 0x67676d6c;
    private const int FixedTensors = 11;
    private const int TensorsAnEncoderLayer = 15;
    private const int TensorsADecoderLayer = 24;

    private const int MostLayers = 256;
    private const int MostFilterValues = 1 << 20;
    private const int MostTokens = 1 << 20;
    private const int LongestName = 256;
    private const int MostDimensions = 3;

    /// <summary>Whether the stream holds a whole model, from its start to its end.</summary>
    public static bool IsWhole(Stream file)
    {
        try
        {
            return Walk(new BinaryFields(file)) && file.Position == file.Length;
        }
        catch (EndOfStreamException)
        {
            return false;
        }
    }

    private static bool Walk(BinaryFields fields)
    {
        if (fields.UInt32() != Magic)
            return false;

        // vocabulary, audio context, state, heads, layers; text context, state, heads, layers; mels, file type
        var header = Enumerable.Range(0, 11).Select(_ => fields.Int32()).ToArray();
        var (encoderLayers, decoderLayers) = (header[4], header[8]);
        if (encoderLayers is < 1 or > MostLayers || decoderLayers is < 1 or > MostLayers)
            return false;

        var tensors = FixedTensors + (TensorsAnEncoderLayer * encoderLayers) + (TensorsADecoderLayer * decoderLayers);
        return SkipFilters(fields) && SkipVocabulary(fields) && Enumerable.Range(0, tensors).All(_ => SkipTensor(fields));
    }

    private static bool SkipFilters(BinaryFields fields)
    {
        var values = (long)fields.Int32() * fields.Int32();
        return values is > 0 and <= MostFilterValues && fields.Skip(values * sizeof(float));
    }

    private static bool SkipVocabulary(BinaryFields fields)
    {
        var tokens = fields.Int32();
        return tokens is > 0 and <= MostTokens && Enumerable.Range(0, tokens).All(_ => fields.Skip(fields.UInt32()));
    }

    private static bool SkipTensor(BinaryFields fields)
    {
        var (dimensions, nameLength, type) = (fields.Int32(), fields.Int32(), fields.Int32());
        if (dimensions is < 1 or > MostDimensions || nameLength is < 1 or > LongestName || BlockOf(type) is not { } block)
            return false;

        var values = 1L;
        for (var i = 0; i < dimensions; i++)
        {
            var size = fields.Int32();
            if (size < 1 || (i == 0 && size % block.Values != 0) || values > int.MaxValue / size)
                return false;
            values *= size;
        }

        return fields.Skip(nameLength) && fields.Skip(values / block.Values * block.Bytes);
    }

    /// <summary>How many values a block of a ggml type holds and how many bytes it takes; null for a type no Whisper model has.</summary>
    private static (int Values, int Bytes)? BlockOf(int type) => type switch
    {
        0 => (1, 4), // f32
        1 => (1, 2), // f16
        2 => (32, 18), // q4_0
        3 => (32, 20), // q4_1
        6 => (32, 22), // q5_0
        7 => (32, 24), // q5_1
        8 => (32, 34), // q8_0
        10 => (256, 84), // q2_K
        11 => (256, 110), // q3_K
        12 => (256, 144), // q4_K
        13 => (256, 176), // q5_K
        14 => (256, 210), // q6_K
        _ => null,
    };

    private sealed class BinaryFields(Stream file)
    {
        private readonly byte[] _buffer = new byte[4];

        public int Int32() => (int)UInt32();

        public uint UInt32()
        {
            file.ReadExactly(_buffer);
            return BinaryPrimitives.ReadUInt32LittleEndian(_buffer);
        }

        public bool Skip(long bytes)
        {
            if (bytes > file.Length - file.Position)
                return false;
            file.Seek(bytes, SeekOrigin.Current);
            return true;
        }
    }
}
