#pragma once

#include <QTimer>
#include <optional>

#include "indexer/store/library.h"
#include "ui/shell/edits.h"

namespace quarterturn {

class Session;

// The recipe that she is writing. It is kept as a draft a second after her last key, when she goes
// elsewhere and when the window closes, and is a revision once she saves it.
class RecipeInHand : public QObject {
    Q_OBJECT
  public:
    explicit RecipeInHand(Session& session);
    ~RecipeInHand() override;

    // Keeps what is not kept yet and reads what the records say. What could not be kept stays in
    // hand. Throws what the store throws.
    void take_up(std::optional<Look> look);

    const std::optional<Look>& look() const { return look_; }
    const Recipe& recipe() const { return recipe_; }
    const std::optional<RecipeRevision>& saved() const { return saved_; }
    std::optional<LocalTime> kept_at() const { return kept_at_; }  // nothing: there is no draft
    bool waits_to_be_kept() const { return unkept_; }

    void write(const Recipe& recipe);
    void take_out(const QString& said, const Recipe& without);
    void keep();
    void save();
    void go_back_to_saved();
    void start_from(const QString& said, const Recipe& recipe);

  signals:
    void changed();  // the recipe, or how far it is kept

  private:
    void read();
    bool is_of_open_library() const;

    Session& session_;
    Path library_;
    QTimer timer_;
    std::optional<Look> look_;
    std::optional<RecipeRevision> saved_;
    std::optional<LocalTime> kept_at_;
    Recipe recipe_;
    bool unkept_ = false;
};

}  // namespace quarterturn
