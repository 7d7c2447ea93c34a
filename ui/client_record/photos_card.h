#pragma once

#include <QFrame>

#include "indexer/sheet/client_content.h"
#include "ui/pictures/picture_loader.h"

namespace quarterturn {

class PhotoTile;
class Session;

// The photos of one sitting as small pictures; a click goes round the head with it.
class PhotosCard : public QFrame {
    Q_OBJECT
  public:
    PhotosCard(Session& session, const PhotoSection& section, QWidget* parent = nullptr);

    std::vector<PictureWish> wishes() const;
    void show_picture(PhotoId photo);  // that has come; others than its own it passes over

  private:
    void add_tile(QLayout& tiles, const Photo& photo);

    Session& session_;
    std::vector<Photo> photos_;
    std::map<PhotoId, PhotoTile*> tiles_;
};

}  // namespace quarterturn
