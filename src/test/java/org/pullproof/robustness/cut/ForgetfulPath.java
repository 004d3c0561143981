package org.pullproof.robustness.cut;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A path of the real disk that says it belongs to the forgetful one. */
record ForgetfulPath(FileSystem system, Path real) implements InvocationHandler {
    static Path of(FileSystem system, Path real) {
        return (Path) Proxy.newProxyInstance(
                ForgetfulPath.class.getClassLoader(), new Class<?>[] {Path.class}, new ForgetfulPath(system, real));
    }

    /** The path of the real disk below it; a real path is its own. */
    static Path real(Object path) {
        return Proxy.isProxyClass(path.getClass()) && Proxy.getInvocationHandler(path) instanceof ForgetfulPath ours
                ? ours.real()
                : (Path) path;
    }

    @Override
    public @Nullable Object invoke(Object proxy, Method method, Object @Nullable [] arguments) throws Throwable {
        if (method.getName().equals("getFileSystem")) {
            return system;
        }
        Object[] below = arguments == null
                ? new Object[0]
                : Arrays.stream(arguments)
                        .map(each -> each instanceof Path ? real(each) : each)
                        .toArray();
        try {
            return lifted(method.invoke(real, below));
        } catch (InvocationTargetException failure) {
            throw Objects.requireNonNull(failure.getCause());
        }
    }

    private @Nullable Object lifted(@Nullable Object answer) {
        if (answer instanceof Path path) {
            return of(system, path);
        }
        return answer instanceof Iterator<?> names ? lifted(names) : answer;
    }

    private Iterator<Path> lifted(Iterator<?> names) {
        List<Path> lifted = new ArrayList<>();
        names.forEachRemaining(name -> lifted.add(of(system, (Path) name)));
        return lifted.iterator();
    }
}
