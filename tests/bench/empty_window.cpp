// empty_window [WORD] : what starting a window takes at the least, and one that shows a word. Scale.sh
// starts it beside the program.

#include <QApplication>
#include <QLabel>
#include <QMainWindow>

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QMainWindow window;
    const QStringList words = QApplication::arguments().mid(1);
    if (!words.isEmpty()) window.setCentralWidget(new QLabel(words.front()));
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
