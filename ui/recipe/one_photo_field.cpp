#include "ui/recipe/one_photo_field.h"

#include "ui/recipe/photo_tiles.h"
#include "ui/recipe/photos_field.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

OnePhotoField::OnePhotoField(RecipeAids& aids, QWidget* parent)
    : Field(parent),
      aids_(aids),
      chosen_(new PhotoTiles(aids.session())),
      choice_(new PhotosField(aids, 1)) {
    QVBoxLayout* column = make_column();
    column->addWidget(chosen_);
    column->addWidget(choice_);
    setLayout(column);
    setFocusProxy(choice_);
    watch(*choice_);
    connect(choice_, &Field::changed, this, &OnePhotoField::show_photo);
    // The way to take it away again is to choose it once more.
    connect(chosen_, &PhotoTiles::clicked, choice_, &PhotosField::turn);
    show_photo();
}

void OnePhotoField::name_it(const QString& name) {
    choice_->name_it(name);
}

void OnePhotoField::show_value(const std::string& checksum) {
    choice_->show_value(checksum.empty() ? std::vector<std::string>()
                                         : std::vector<std::string>{checksum});
    show_photo();
}

std::string OnePhotoField::value() const {
    return choice_->value().empty() ? std::string() : choice_->value().front();
}

void OnePhotoField::show_photo() {
    const auto photo = aids_.photo(value());
    chosen_->setVisible(photo.has_value());
    chosen_->show_photos(photo ? std::vector<Photo>{*photo} : std::vector<Photo>{});
}

}  // namespace quarterturn
