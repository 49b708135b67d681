using System.Collections;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Runtime.CompilerServices;
using NotebookKit.Numerics;

namespace NotebookKit.Tests.House;

/// <summary>An answer of the library depends on what it is given, never on what happens to be set around it.</summary>
public class AmbientStateTests
{
    private static readonly string[] OfTheProcess =
        ["GetEnvironmentVariable", "GetEnvironmentVariables", "ExpandEnvironmentVariables", "SetEnvironmentVariable", "get_CommandLine",
            "GetCommandLineArgs", "get_CurrentDirectory"];

    private static IEnumerable<FieldInfo> StaticFields => Repository.Library.GetTypes()
        .SelectMany(t => t.GetFields(BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .Where(f => !f.IsLiteral);

    [Fact]
    public void The_library_reads_no_environment_and_no_command_line()
    {
        using var file = new PEReader(File.OpenRead(Repository.Library.Location));
        var reader = file.GetMetadataReader();
        var called = reader.MemberReferences.Select(m =>
            reader.GetString(reader.GetMemberReference(m).Name)).ToHashSet(StringComparer.Ordinal);
        Assert.Contains("ThrowIfCancellationRequested", called);
        Violations.None(OfTheProcess.Where(called.Contains));
    }

    [Fact]
    public void Nothing_but_the_run_travels_with_the_flow_of_a_call_or_with_a_thread()
    {
        var flowing = StaticFields.Where(f => f.IsDefined(typeof(ThreadStaticAttribute)) || IsOf(f.FieldType, typeof(AsyncLocal<>))
            || IsOf(f.FieldType, typeof(ThreadLocal<>))).ToList();
        Assert.Equal(typeof(WorkRun), Assert.Single(flowing).DeclaringType);
    }

    [Fact]
    public void No_static_field_holds_what_can_be_added_to() =>
        Violations.None(
            from field in StaticFields
            let kind = field.FieldType
            where !kind.IsArray && (IsOf(kind, typeof(ConditionalWeakTable<,>)) || IsOf(kind, typeof(HashSet<>))
                || IsOf(kind, typeof(Lazy<>))
                || (kind.IsClass && (typeof(IDictionary).IsAssignableFrom(kind) || typeof(IList).IsAssignableFrom(kind))
                    && !kind.Namespace!.EndsWith("Frozen", StringComparison.Ordinal)))
            select $"{field.DeclaringType!.FullName}.{field.Name} is a {kind.Name}");

    private static bool IsOf(Type type, Type open) => type.IsGenericType && type.GetGenericTypeDefinition() == open;
}
