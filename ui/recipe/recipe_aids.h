#pragma once

#include <QObject>
#include <optional>

#include "indexer/looks/own_words.h"
#include "indexer/record/photo.h"

namespace quarterturn {

class Session;

// What every field of a recipe may ask for: her own earlier words, and the photos of the look.
class RecipeAids : public QObject {
    Q_OBJECT
  public:
    explicit RecipeAids(Session& session) : session_(session) {}

    void look_at(const Look& look);  // throws StoreError

    Session& session() const { return session_; }
    const std::optional<Look>& look() const { return look_; }
    QStringList words_beginning(WordsFor what, const QString& begun) const;
    // Of the look, or of its sittings and not another look's; in the order of their moments.
    const std::vector<Photo>& photos() const { return photos_; }
    std::optional<Photo> photo(const std::string& sha256) const;

  signals:
    void photos_changed();

  private:
    Session& session_;
    std::optional<Look> look_;
    std::optional<OwnWords> words_;
    std::vector<Photo> photos_;
};

}  // namespace quarterturn
