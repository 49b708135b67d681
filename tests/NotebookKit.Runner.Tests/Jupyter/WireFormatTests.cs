using System.Text;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Jupyter;

namespace NotebookKit.Runner.Tests.Jupyter;

public sealed class WireFormatTests
{
    private readonly WireFormat wire = new("a key");

    private static JupyterMessage Message(params byte[][] buffers) =>
        JupyterMessage.New("session", "execute_request", null, new JsonObject { ["code"] = "σ < 1" }, Encoding.ASCII.GetBytes("client"))
            with { Buffers = buffers };

    // HMAC-SHA256 test case 2 of RFC 4231: key "Jefe", data "what do ya want for nothing?", cut into the four signed parts.
    [Fact]
    public void Signatures_are_HMAC_SHA256_over_the_four_parts()
    {
        byte[][] frames =
        [
            "<IDS|MSG>"u8.ToArray(), "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"u8.ToArray(),
            "what do"u8.ToArray(), " ya want"u8.ToArray(), " for noth"u8.ToArray(), "ing?"u8.ToArray(),
        ];
        // Signed right but not JSON: refused for that alone. The wrong signature is seen before anything is parsed.
        Assert.Null(new WireFormat("Jefe").Read(frames));
        var own = new WireFormat("Jefe").Write(Message());
        Assert.NotNull(new WireFormat("Jefe").Read(own));
        using var hash = System.Security.Cryptography.IncrementalHash.CreateHMAC(System.Security.Cryptography.HashAlgorithmName.SHA256,
            "Jefe"u8);
        foreach (var part in frames.Skip(2)) hash.AppendData(part);
        Assert.Equal(Encoding.ASCII.GetString(frames[1]), Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    [Fact]
    public void A_message_comes_back_as_it_went_with_its_binary_buffers()
    {
        var back = wire.Read(wire.Write(Message([0, 255, 1], [])))!;
        Assert.Equal("execute_request", back.Type);
        Assert.Equal("σ < 1", (string?)back.Content["code"]);
        Assert.Equal("client", Encoding.ASCII.GetString(Assert.Single(back.Identities)));
        Assert.Equal([[0, 255, 1], []], back.Buffers);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void A_message_changed_on_the_way_is_dropped(int frame)
    {
        var frames = wire.Write(Message()).Select(f => f.ToArray()).ToList();
        frames[frame + 1][0] ^= 1;
        Assert.Null(wire.Read(frames));
    }

    [Fact]
    public void Another_key_is_refused() => Assert.Null(new WireFormat("another").Read(wire.Write(Message())));

    [Fact]
    public void Without_a_key_nothing_is_signed()
    {
        var open = new WireFormat("");
        var frames = open.Write(Message());
        Assert.Empty(frames[2]);
        Assert.NotNull(open.Read(frames));
    }

    [Fact]
    public void Several_routing_frames_are_kept()
    {
        var message = Message() with { Identities = [[1], [2], [3]] };
        Assert.Equal([[1], [2], [3]], wire.Read(wire.Write(message))!.Identities);
    }

    [Fact]
    public void Garbage_is_no_message()
    {
        Assert.Null(wire.Read([]));
        Assert.Null(wire.Read([[1, 2, 3]]));
        Assert.Null(wire.Read(["<IDS|MSG>"u8.ToArray()]));
        Assert.Null(new WireFormat("").Read(["<IDS|MSG>"u8.ToArray(), [], "{"u8.ToArray(), "{}"u8.ToArray(), "{}"u8.ToArray(),
            "{}"u8.ToArray()]));
        Assert.Null(new WireFormat("").Read(["<IDS|MSG>"u8.ToArray(), [], "[]"u8.ToArray(), "{}"u8.ToArray(), "{}"u8.ToArray(),
            "{}"u8.ToArray()]));
    }

    // Signed right and wrong all the same: it must show when it is read, not later on a thread that owns the sockets.
    [Theory]
    [InlineData("""{"msg_type": "a", "msg_type": "b"}""", "{}")]
    [InlineData("{}", """{"data": {"method": "update", "method": "custom"}}""")]
    public void A_name_that_stands_twice_is_no_message(string header, string content)
        => Assert.Null(Read(Encoding.UTF8.GetBytes(header), Encoding.UTF8.GetBytes(content)));

    [Fact]
    public void Bytes_that_are_no_text_are_no_message()
    {
        Assert.Null(Read([.. "{\"msg_type\": \""u8, 0xFF, .. "\"}"u8], "{}"u8.ToArray()));
        Assert.Null(Read("{}"u8.ToArray(), [.. "{\"comm_id\": \""u8, 0xC3, .. "\"}"u8]));
    }

    [Theory]
    [InlineData("""x\ud800y""", "x\ufffdy")]
    [InlineData("""\uDE80""", "\ufffd")]
    [InlineData("""\ud83d\ude80""", "🚀")]
    [InlineData("""\ud83d\ud83d\ude80""", "\ufffd🚀")]
    [InlineData("""a\\ud800""", "a\\ud800")]
    public void Half_a_character_is_read_as_the_mark_for_one_that_is_unknown(string sent, string read) =>
        Assert.Equal(read, JupyterMessage.TextOf(Read("{}"u8.ToArray(), Encoding.UTF8.GetBytes($$"""{"code": "{{sent}}"}"""))!.Content, "code"));

    [Fact]
    public void A_deep_output_fits_into_a_message()
    {
        var deep = System.Text.Json.Nodes.JsonNode.Parse(new string('[', 64) + new string(']', 64));
        Assert.NotEmpty(wire.Write(Message() with { Content = new() {
            ["data"] = new System.Text.Json.Nodes.JsonObject { ["application/json"] = deep } } }));
    }

    [Theory]
    [InlineData("1 + 1", "complete")]
    [InlineData("var a = 1;\n#!who", "complete")]
    [InlineData("#!who\nfor (;;) {", "incomplete")]
    [InlineData("var s = @\"one\ntwo", "incomplete")]
    [InlineData("var s = \"\"\"\n    one", "incomplete")]
    [InlineData("#load \"x.cs\"", "complete")]
    [InlineData("}", "invalid")]
    public void Whether_code_is_whole_is_told(string code, string status)
        => Assert.Equal(status, (string?)Completeness.Answer(code)["status"]);

    private static JupyterMessage? Read(byte[] header, byte[] content) =>
        new WireFormat("").Read(["<IDS|MSG>"u8.ToArray(), [], header, "{}"u8.ToArray(), "{}"u8.ToArray(), content]);

    [Theory]
    [InlineData("a🚀b", 0, 0)]
    [InlineData("a🚀b", 1, 1)]
    [InlineData("a🚀b", 2, 3)]
    [InlineData("a🚀b", 3, 4)]
    [InlineData("a🚀b", 9, 4)]
    public void Places_in_code_count_whole_characters(string code, int point, int unit)
    {
        Assert.Equal(unit, CodePoints.ToUnits(code, point));
        Assert.Equal(Math.Min(point, 3), CodePoints.FromUnits(code, unit));
    }
}
