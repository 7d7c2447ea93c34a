#include "ui/shell/new_library_part.h"

#include <QFileDialog>
#include <QLineEdit>
#include <QStandardPaths>

#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

NewLibraryPart::NewLibraryPart(Session& session, QPushButton* start, QWidget* parent)
    : QWidget(parent),
      session_(session),
      folder_(new QLineEdit(from_utf8(proposed_folder().native()))),
      notice_(new Notice) {
    auto* column = make_column();
    setLayout(column);
    column->addWidget(make_text(
        tr("A folder that holds your photos and records. You can look into it at any time, also "
           "without this program.")));
    folder_->setAccessibleName(tr("Folder of the new library"));
    QPushButton* other = make_button(tr("Another folder…"));
    connect(other, &QPushButton::clicked, this, &NewLibraryPart::choose_folder);
    connect(start, &QPushButton::clicked, this, &NewLibraryPart::start_here);
    connect(folder_, &QLineEdit::returnPressed, this, &NewLibraryPart::start_here);
    QHBoxLayout* row = make_row(2);
    row->addWidget(folder_, 1);
    row->addWidget(other);
    column->addLayout(row);
    column->addWidget(notice_);
    column->addWidget(start, 0, Qt::AlignLeading);
}

Path NewLibraryPart::proposed_folder() {
    const Path home = to_utf8(QStandardPaths::writableLocation(QStandardPaths::HomeLocation));
    std::error_code none;
    Path folder = home / "Quarterturn";
    for (int number = 2; std::filesystem::exists(folder, none); ++number) {
        folder = home / ("Quarterturn " + std::to_string(number));
    }
    return folder;
}

void NewLibraryPart::choose_folder() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Folder of the new library"), folder_->text());
    if (!folder.isEmpty()) folder_->setText(folder);
}

void NewLibraryPart::start_here() {
    const QString folder = folder_->text().trimmed();
    notice_->say(folder.isEmpty() ? tr("Name a folder for it.")
                                  : session_.create(Path(to_utf8(folder))));
}

}  // namespace quarterturn
