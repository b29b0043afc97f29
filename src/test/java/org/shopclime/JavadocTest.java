package org.shopclime;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * What is public is documented: a sentence, every parameter and component, and what is returned.
 * The compiler's own check of what is missing asks for parameters of compact constructors, which
 * have none to write, so it is off and this test stands in.
 */
class JavadocTest {

  private static final Path MAIN = Path.of("src/main/java");

  @Test
  void whatIsPublicIsDocumented() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<String> missing = new ArrayList<>();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
        Stream<Path> walked = Files.walk(MAIN)) {
      List<Path> sources =
          walked
              .filter(path -> path.toString().endsWith(".java"))
              .filter(path -> !path.endsWith("package-info.java"))
              .toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("--release", "17"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources));
      DocTrees trees = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new Scanner(unit, trees, missing).scan(unit, null);
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void everyRoomHasItsPage() throws IOException {
    try (Stream<Path> rooms = Files.list(MAIN.resolve("org/shopclime"))) {
      for (Path room : rooms.filter(Files::isDirectory).toList()) {
        assertThat(Files.readString(room.resolve("package-info.java")))
            .as(room.toString())
            .contains(
                "<b>Answers:</b>",
                "<b>May touch:</b>",
                "<b>Units:</b>",
                "<b>Source:</b>",
                "<b>Limits:</b>",
                "<b>Checked by:</b>")
            .doesNotContain("to be told");
      }
    }
  }

  private static final class Scanner extends TreePathScanner<Void, Void> {
    private final CompilationUnitTree unit;
    private final DocTrees trees;
    private final List<String> missing;

    Scanner(CompilationUnitTree unit, DocTrees trees, List<String> missing) {
      this.unit = unit;
      this.trees = trees;
      this.missing = missing;
    }

    @Override
    public Void visitClass(ClassTree node, Void nothing) {
      boolean local = getCurrentPath().getParentPath().getLeaf() instanceof MethodTree;
      Set<Modifier> flags = node.getModifiers().getFlags();
      boolean memberOfInterface =
          getCurrentPath().getParentPath().getLeaf() instanceof ClassTree outer
              && outer.getKind() == Tree.Kind.INTERFACE;
      if (local || node.getSimpleName().isEmpty()) {
        return null;
      }
      if (!flags.contains(Modifier.PUBLIC) && !memberOfInterface) {
        return null;
      }
      DocCommentTree comment = comment(node.getSimpleName().toString());
      if (comment != null && node.getKind() == Tree.Kind.RECORD) {
        Set<String> told = params(comment);
        for (Tree member : node.getMembers()) {
          if (member instanceof VariableTree component
              && !component.getModifiers().getFlags().contains(Modifier.STATIC)
              && !told.contains(component.getName().toString())) {
            missing.add(where(node.getSimpleName().toString()) + " @param " + component.getName());
          }
        }
      }
      return super.visitClass(node, null);
    }

    @Override
    public Void visitMethod(MethodTree node, Void nothing) {
      ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
      Set<Modifier> flags = node.getModifiers().getFlags();
      boolean open =
          flags.contains(Modifier.PUBLIC)
              || flags.contains(Modifier.PROTECTED)
              || owner.getKind() == Tree.Kind.INTERFACE
              || owner.getKind() == Tree.Kind.ANNOTATION_TYPE;
      boolean overrides =
          node.getModifiers().getAnnotations().stream()
              .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
      boolean generated = trees.getSourcePositions().getEndPosition(unit, node) < 0;
      if (!open || overrides || generated || flags.contains(Modifier.PRIVATE)) {
        return null;
      }
      String name = owner.getSimpleName() + "." + node.getName();
      boolean constructor = node.getReturnType() == null;
      boolean ofRecord = constructor && owner.getKind() == Tree.Kind.RECORD;
      DocCommentTree comment = comment(name);
      if (comment == null || ofRecord) {
        return null;
      }
      Set<String> told = params(comment);
      for (VariableTree parameter : node.getParameters()) {
        if (!told.contains(parameter.getName().toString())) {
          missing.add(where(name) + " @param " + parameter.getName());
        }
      }
      boolean returns = !constructor && !node.getReturnType().toString().equals("void");
      boolean told2 =
          comment.getBlockTags().stream().anyMatch(tag -> tag.getKind() == DocTree.Kind.RETURN);
      if (returns && !told2) {
        missing.add(where(name) + " @return");
      }
      return null;
    }

    private DocCommentTree comment(String name) {
      DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
      if (comment == null || comment.getFirstSentence().isEmpty()) {
        missing.add(where(name));
        return null;
      }
      return comment;
    }

    private String where(String name) {
      return Path.of(unit.getSourceFile().getName()).getFileName() + ": " + name;
    }

    private static Set<String> params(DocCommentTree comment) {
      return comment.getBlockTags().stream()
          .filter(tag -> tag.getKind() == DocTree.Kind.PARAM)
          .map(tag -> ((ParamTree) tag).getName().getName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
