#include "ui/recipe/photos_field.h"

#include <QPointer>

#include "ui/recipe/paste_picture.h"
#include "ui/recipe/photo_tiles.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

PhotosField::PhotosField(RecipeAids& aids, std::size_t most, QWidget* parent)
    : Field(parent),
      aids_(aids),
      most_(most),
      choose_(make_button(tr("Choose photos of the look…"))),
      paste_(make_button(tr("Paste a picture"))),
      none_(make_quiet(tr("There is no photo of this look yet."))),
      choice_(new PhotoTiles(aids.session())) {
    auto* buttons = new FlowLayout(space(2));
    buttons->addWidget(choose_);
    buttons->addWidget(paste_);
    QVBoxLayout* column = make_column();
    column->addLayout(buttons);
    column->addWidget(none_);
    column->addWidget(choice_);
    setLayout(column);
    setFocusProxy(choose_);
    choose_->setCheckable(true);
    choice_->hide();
    none_->hide();
    connect(choose_, &QPushButton::toggled, this, &PhotosField::show_choice);
    connect(paste_, &QPushButton::clicked, this, &PhotosField::paste);
    connect(choice_, &PhotoTiles::clicked, this, &PhotosField::turn);
    connect(&aids_, &RecipeAids::photos_changed, this, &PhotosField::show_choice);
}

void PhotosField::name_it(const QString& name) {
    choose_->setAccessibleName(tr("%1: choose photos of the look").arg(name));
    paste_->setAccessibleName(tr("%1: paste a picture").arg(name));
}

void PhotosField::show_value(const std::vector<std::string>& checksums) {
    if (checksums == checksums_) return;
    checksums_ = checksums;
    show_choice();
}

void PhotosField::show_choice() {
    const bool open = choose_->isChecked();
    none_->setVisible(open && aids_.photos().empty());
    choice_->setVisible(open && !aids_.photos().empty());
    if (open) choice_->show_photos(aids_.photos(), {checksums_.begin(), checksums_.end()});
}

void PhotosField::turn(PhotoId photo) {
    const auto found = aids_.session().library().photos().find(photo);
    if (!found) return;
    const std::string& checksum = found->file.sha256;
    if (std::erase(checksums_, checksum) == 0) checksums_.push_back(checksum);
    keep_the_newest();
    show_choice();
    emit changed();
}

void PhotosField::keep_the_newest() {
    if (checksums_.size() <= most_) return;
    checksums_.erase(checksums_.begin(), checksums_.end() - static_cast<std::ptrdiff_t>(most_));
}

void PhotosField::put_in(const std::vector<std::string>& checksums) {
    for (const std::string& checksum : checksums) {
        if (std::ranges::find(checksums_, checksum) == checksums_.end()) {
            checksums_.push_back(checksum);
        }
    }
    keep_the_newest();
    show_choice();
    emit changed();
}

void PhotosField::paste() {
    if (!aids_.look()) return;
    bring_in_from_clipboard(aids_.session(), aids_.look()->id,
                            [field = QPointer(this)](const std::vector<std::string>& checksums) {
                                if (field) field->put_in(checksums);
                            });
}

}  // namespace quarterturn
