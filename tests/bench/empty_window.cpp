// empty_window: what starting a window takes at the least. Scale.sh starts it beside the program.

#include <QApplication>
#include <QMainWindow>

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QMainWindow window;
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
